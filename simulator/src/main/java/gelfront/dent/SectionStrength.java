// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

import gelfront.feed.SkinStrength;
import gelfront.grid.Cavity;
import gelfront.material.Plastisol;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Suction that the skin bears, section by section along each cavity's axis, and the contact that it
 * loses where it has given way.
 *
 * <pre>
 *   bears = max(least, min(Q, peak)),   Q = integral of d(all-round suction)/de de
 * </pre>
 *
 * <p>with the all-round law and the confined ring's peak of {@link SkinLaw} for the skin's
 * thickness on its thinnest side and its modulus of the moment, e the share of the section that it
 * has given: layers that set later are strained less. While a skin has given nothing it resists
 * nothing, and only {@code least} keeps it at the wall; beyond the peak it goes in as one lobe.
 *
 * <p>What a section has given lies between skin and wall as air, here as if all round:
 *
 * <pre>  lost contact = min(V / (P ds) / k_air, most),   P the section's wall per length</pre>
 */
public final class SectionStrength implements SkinStrength {
  /** W/m K, air at some 60 °C; from memory. */
  private static final double AIR = 0.028;

  private final Cavity cavity;
  private final Plastisol plastisol;
  private final GelModulus modulus;
  private final SkinLaw law;
  private final double least;
  private final double[] volumes;
  private final double[] bears;
  private final List<OneCavity> cavities = new ArrayList<>();

  /**
   * @param of number of its cavity per plastisol cell, from 1; 0 in the feed system
   * @param count cavities
   * @param least Pa that it bears at least, everywhere
   */
  public SectionStrength(Cavity cavity, short[] of, int count, Plastisol plastisol, double least) {
    this.cavity = cavity;
    this.plastisol = plastisol;
    this.least = least;
    modulus = GelModulus.of(plastisol);
    law = new SkinLaw(plastisol.densityHot());
    volumes = cavity.volumes();
    bears = new double[volumes.length];
    for (int k = 1; k <= count; k++) {
      int one = k;
      cavities.add(new OneCavity(Sections.of(cavity, volumes, c -> of[c] == one)));
    }
  }

  @Override
  public double[] bears(double[] temperature, double[] given) {
    Arrays.fill(bears, least);
    cavities.forEach(k -> k.update(temperature, given));
    return bears;
  }

  /**
   * @param given m3 that each cell's skin has given so far
   * @param most m2 K/W that contact becomes poorer by at most
   * @param lost m2 K/W per cell; modified in the cavities
   */
  public void lostContact(double[] given, double most, float[] lost) {
    cavities.forEach(k -> k.lose(given, most, lost));
  }

  /** Share of a cell that is liquid, by how far its neighbours are hotter or colder. */
  private double liquidShare(int c, double[] t) {
    double over = t[c] - plastisol.noFlow();
    double across = 1e-9;
    for (int f = cavity.faces(c) - 1; f >= 0; f--) {
      across = Math.max(across, Math.abs(t[cavity.across(c, f)] - t[c]));
    }
    return Math.max(0, Math.min(1, 0.5 + over / across));
  }

  private final class OneCavity {
    private final Sections sections;
    private final Skin skin;
    private final double[] strained;
    private final double[] strength;
    private double[] before;

    OneCavity(Sections sections) {
      this.sections = sections;
      skin = new Skin(sections);
      strained = new double[sections.count()];
      strength = new double[sections.count()];
      before = new double[sections.count()];
    }

    void update(double[] temperature, double[] given) {
      double[] now = spread(given);
      if (Arrays.equals(now, before) && Arrays.stream(strained).allMatch(q -> q == 0)) {
        return;
      }
      skin.clear();
      for (int c = 0; c < given.length; c++) {
        if (sections.slice(c) >= 0) {
          double share = liquidShare(c, temperature);
          if (share > 0) {
            skin.add(c, share * volumes[c]);
          }
        }
      }
      double[] stiff = sections.modulus(c -> temperature[c], volumes, plastisol.noFlow(), modulus);
      for (int s = 0; s < now.length; s++) {
        strength[s] = strength(s, (now[s] - before[s]) / sections.volume(s), stiff[s]);
      }
      before = now;
      for (int c = 0; c < given.length; c++) {
        bears[c] = sections.slice(c) >= 0 ? sections.at(c, strength) : bears[c];
      }
    }

    /** m3 given by each section. */
    private double[] spread(double[] given) {
      double[] sum = new double[sections.count()];
      for (int c = 0; c < given.length; c++) {
        if (given[c] != 0) {
          sections.spread(c, given[c], sum);
        }
      }
      return sum;
    }

    void lose(double[] given, double most, float[] lost) {
      double[] air = spread(given);
      for (int s = 0; s < air.length; s++) {
        double wall = sections.perimeter(s) * sections.thickness();
        air[s] = wall > 0 ? Math.min(most, air[s] / wall / AIR) : 0;
      }
      for (int c = 0; c < given.length; c++) {
        lost[c] = sections.slice(c) >= 0 ? (float) sections.at(c, air) : lost[c];
      }
    }

    private double strength(int s, double lost, double stiff) {
      if (!skin.isRound(s)) {
        return least;
      }
      double r = sections.radius(s);
      double t = skin.thinnest(s);
      strained[s] += law.allRound(r, t, stiff, lost);
      return Math.max(least, Math.min(strained[s], law.confinedPeak(r, t, stiff)));
    }
  }
}
