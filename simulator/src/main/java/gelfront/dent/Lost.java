// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

/**
 * What one pocket takes from the slices, one bound of it: lost share of area, skin and depth.
 *
 * <pre>
 *   e_s = lost share of slice s less the share that the whole part has alike, never falling
 *   depth  = integral of d(law)/de at the skin of the moment, thickness and modulus
 *   arc    = lost area / integral of dA / arc(t): of a lobe that holds the same area as its growth
 * </pre>
 */
final class Lost {
  private final Sections sections;
  private final SkinLaw law;
  private final double partVolume;
  private final double[] lost;
  private final double[] skin;
  private final double[] stiff;
  private final double[] first;
  private final double[] counted;
  private final double[] mildest;
  private final double[] worst;
  private final double[] perArc;
  private double volume;

  /**
   * @param partVolume m3 that even shrinkage spreads over
   */
  Lost(Sections sections, SkinLaw law, double partVolume) {
    this.sections = sections;
    this.law = law;
    this.partVolume = partVolume;
    int n = sections.count();
    lost = new double[n];
    skin = new double[n];
    stiff = new double[n];
    first = new double[n];
    counted = new double[n];
    mildest = new double[n];
    worst = new double[n];
    perArc = new double[n];
  }

  /** m3 that the pocket lost, wherever it is taken from. */
  void add(double more) {
    volume += more;
  }

  /** Takes a share of a slice's area away under a skin of metres and Pa. */
  void take(int s, double share, double thickness, double modulus) {
    lost[s] += share;
    skin[s] = thickness;
    stiff[s] = modulus;
  }

  /** Lets all slices give way to what they lost since the last call. */
  void deepen() {
    for (int s = 0; s < lost.length; s++) {
      double e = Math.min(1, lost[s] - volume / partVolume);
      if (e > counted[s] && skin[s] > 0) {
        deepen(s, e);
      }
    }
  }

  private void deepen(int s, double e) {
    if (first[s] == 0) {
      first[s] = skin[s];
    }
    double r = sections.radius(s);
    double lying = law.lying(r, skin[s], stiff[s], e) - law.lying(r, skin[s], stiff[s], counted[s]);
    double upright = law.upright(r, skin[s], e) - law.upright(r, skin[s], counted[s]);
    mildest[s] += Math.min(lying, upright);
    worst[s] += Math.max(lying, upright);
    perArc[s] += (e - counted[s]) / law.arc(r, skin[s]);
    counted[s] = e;
  }

  /** m3. */
  double volume() {
    return volume;
  }

  /** Metres: the milder of lying and upright. */
  double mildest(int s) {
    return mildest[s];
  }

  /** Metres: the worse of both. */
  double worst(int s) {
    return worst[s];
  }

  /** Metres: the worse of both, deepened by tack. */
  double tacky(int s) {
    return SkinLaw.TACK * worst[s];
  }

  /** Metres round the section; 0 where nothing is lost. */
  double arc(int s) {
    return perArc[s] > 0 ? counted[s] / perArc[s] : 0;
  }

  /** Metres of skin when it first gave way; 0: it never did. */
  double firstSkin(int s) {
    return first[s];
  }

  /** Share of the slice's area beyond even shrinkage. */
  double share(int s) {
    return counted[s];
  }
}
