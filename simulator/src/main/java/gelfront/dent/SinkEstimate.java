// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

import gelfront.base.Progress;
import gelfront.finding.Dent;
import gelfront.grid.Basins;
import gelfront.grid.Cavity;
import gelfront.grid.WallDistance;
import gelfront.material.Plastisol;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * Unfed contraction of a pocket and where the skin gives way to it.
 *
 * <pre>
 *   dV = V (1 - exp(-beta dT)) per cell and interval from the cut-off on
 *   low bound:  T down to no-flow;  high bound: down to the skin's temperature (the gelled core
 *   goes on pulling: Turk and Svensek, Polymers 15 (2023) 2841), while its slice holds liquid
 *   share of slice s:  w_s ~ R_s^4 / t_s^3  over the slices where the pocket still flows
 *   e_s = integral of dV w_s / (A_s ds);  even share e_0 = integral of dV / V_part
 *   depth = integral of d(law)/de at the t_s of the moment, over e = max(0, e_s - e_0)
 * </pre>
 *
 * <p>Liquid is drawn along the part, gel isn't: a slice that has set through only grows smaller,
 * and its contraction is not laid on the last slices that still flow.
 *
 * <p>t_s is the skin that {@link Skin} finds, on its thinnest side for the depth; its modulus is
 * the mean of what has set in the slice. What every slice has alike makes the part smaller, not
 * dented. Low depth: the milder of lying and upright with the low volume; high depth: the worse of
 * both with the high volume while it flows, deepened by tack to the wall.
 */
public final class SinkEstimate {
  private final Cavity cavity;
  private final WallDistance walls;
  private final float[] set;
  private final FrontPassage front;
  private final TemperatureHistory history;
  private final Plastisol plastisol;
  private final double skinTemperature;
  private final Sections sections;
  private final SkinLaw law;
  private final double[] volumes;
  private final double partVolume;
  private final Optional<float[]> unfed;
  private final Vec3 up;

  /** Modulus per slice at each time of the history, once it is asked for. */
  private final double[][] stiff;

  /**
   * @param member cells of the part, or of the one cavity that is looked at
   * @param set s per plastisol cell
   * @param skinTemperature °C that the skin ends up with: the mould's
   * @param unfed m3 per cell that the flow left; empty: all contraction since the cut-off
   * @param up unit vector, up while it cools
   */
  public SinkEstimate(
      Cavity cavity,
      IntPredicate member,
      WallDistance walls,
      float[] set,
      TemperatureHistory history,
      Plastisol plastisol,
      double skinTemperature,
      Optional<float[]> unfed,
      Vec3 up) {
    this.unfed = unfed;
    this.up = up;
    this.cavity = cavity;
    this.walls = walls;
    this.set = set;
    front = new FrontPassage(cavity, set);
    this.history = history;
    this.plastisol = plastisol;
    this.skinTemperature = skinTemperature;
    volumes = cavity.volumes();
    sections = Sections.of(cavity, volumes, member);
    law = new SkinLaw(plastisol.densityHot());
    stiff = new double[history.size()][];
    double v = 0;
    for (int s = 0; s < sections.count(); s++) {
      v += sections.area(s) * sections.thickness();
    }
    partVolume = v;
  }

  /**
   * @param visible metres from which a dent is seen
   * @throws gelfront.base.CancelledException if the watcher wants to stop
   */
  public Sink of(Basins.Basin pocket, double visible, Progress progress) {
    return new Estimate(pocket).sink(visible, progress);
  }

  /**
   * How far the part goes oval if its mould is opened at a time.
   *
   * @param visible metres from which that is seen
   */
  public Oval opened(double time, double visible) {
    return new OvalEstimate(cavity, sections, front, history, plastisol, volumes)
        .opened(time, visible);
  }

  private double[] stiff(int i) {
    if (stiff[i] == null) {
      float[] t = history.temperature(i);
      stiff[i] = sections.modulus(c -> t[c], volumes, plastisol.noFlow(), GelModulus.of(plastisol));
    }
    return stiff[i];
  }

  private Lost none() {
    return new Lost(sections, law, partVolume);
  }

  /** Slices of one pocket while it sinks. */
  private final class Estimate {
    private final Basins.Basin pocket;
    private final int groups;
    private final double[][] flows;
    private final PocketSkin[] skins;
    private final int[] place;

    /** s from which on a group stands for itself. */
    private final double[] separated;

    /** Places in the pocket of cells that were liquid when last looked at, rising. */
    private final int[] liquid;

    private int liquidCells;
    private final Lost low = none();
    private final Lost high = none();
    private final OpenLonger openLonger = new OpenLonger();
    private double temperature;

    /** m3 of gelled contraction in slices that held no liquid any more. */
    private double setThrough;

    /** °C per cell of the pocket at the start of the interval. */
    private final float[] before;

    /** Of the contraction since the cut-off, per cell of the pocket. */
    private final float[] unfedShare;

    Estimate(Basins.Basin pocket) {
      this.pocket = pocket;
      groups = pocket.peaks().size();
      flows = new double[groups][3];
      skins = new PocketSkin[groups];
      Arrays.setAll(skins, g -> new PocketSkin(front, walls, sections));
      place = new int[sections.count()];
      Arrays.fill(place, -1);
      separated = pocket.peaks().stream().mapToDouble(Basins.Peak::separated).toArray();
      before = new float[pocket.cells().length];
      liquid = new int[before.length];
      Arrays.setAll(liquid, i -> i);
      liquidCells = liquid.length;
      unfedShare = new float[before.length];
      for (int i = 0; i < before.length; i++) {
        before[i] = (float) history.at(pocket.cells()[i], pocket.level());
        unfedShare[i] = unfedShare(pocket.cells()[i], before[i]);
      }
    }

    Sink sink(double visible, Progress progress) {
      double from = pocket.level();
      double cubes = 0;
      for (int c : pocket.cells()) {
        cubes += share(c);
      }
      for (int i = 0; i < before.length; i++) {
        temperature += share(pocket.cells()[i]) * before[i] / cubes;
      }
      for (int i = 0; i < history.size(); i++) {
        progress.check("judging", (double) i / history.size());
        double to = history.time(i);
        if (to > from) {
          interval(from, to, history.temperature(i), stiff(i));
          from = to;
        }
      }
      double open = openLonger.until(visible, SinkEstimate.this::none, from);
      double late = rest();
      DentLobes lobes = new LobeMaker(cavity, sections, set, up).of(pocket, low, high);
      List<Dent> dents = new ArrayList<>();
      for (int g = 0; g < groups; g++) {
        dents.add(dent(g, lobes));
      }
      return new Sink(
          low.volume(), high.volume() + setThrough + late, temperature, dents, open, lobes);
    }

    /** Of a voxel. */
    private double share(int c) {
      return cavity.cubeVolume(c) / cavity.cubeVolume(0);
    }

    private void interval(double from, double to, float[] after, double[] modulus) {
      double middle = 0.5 * (from + to);
      gather(middle);
      contract(after, middle);
      double[] share = new double[sections.count()];
      double[] skin = new double[sections.count()];
      double all = 0;
      for (int g = 0; g < groups; g++) {
        low.add(flows[g][0]);
        high.add(flows[g][1]);
        all += flows[g][2];
        give(g, share, skin, modulus);
      }
      openLonger.add(from, all, share, skin, modulus);
      low.deepen();
      high.deepen();
    }

    /** What is still liquid, by group. */
    private void gather(double middle) {
      for (PocketSkin skin : skins) {
        skin.clear();
      }
      int left = 0;
      for (int k = 0; k < liquidCells; k++) {
        int i = liquid[k];
        int c = pocket.cells()[i];
        if (skins[group(i, middle)].add(c, volumes[c], middle)) {
          liquid[left++] = i;
        }
      }
      liquidCells = left;
    }

    private void contract(float[] after, double middle) {
      for (double[] f : flows) {
        Arrays.fill(f, 0);
      }
      for (int i = 0; i < pocket.cells().length; i++) {
        contract(i, after[pocket.cells()[i]], middle);
      }
    }

    /**
     * Which hot spot's region a cell belongs to at a time: before a neck closes, the main one's.
     */
    private int group(int i, double time) {
      int g = pocket.peak()[i];
      return g > 0 && time >= separated[g] ? g : 0;
    }

    private void contract(int i, float b, double middle) {
      int c = pocket.cells()[i];
      int g = group(i, middle);
      double a = before[i];
      before[i] = b;
      double noFlow = plastisol.noFlow();
      double hot = plastisol.expansionHot() * (Math.max(a, noFlow) - Math.max(b, noFlow));
      double gelled = plastisol.expansionGelled() * (Math.min(a, noFlow) - Math.min(b, noFlow));
      double v = volumes[c];
      double liquid = v * -Math.expm1(-Math.max(0, hot));
      double set = v * -Math.expm1(-Math.max(0, gelled));
      double unfedNow = liquid * unfedShare[i];
      flows[g][0] += unfedNow;
      boolean pulls = sections.slice(c) >= 0 && skins[g].skin().isRound(sections.slice(c));
      flows[g][1] += unfedNow + (pulls ? set : 0);
      flows[g][2] += liquid + (pulls ? set : 0);
      setThrough += pulls ? 0 : set;
    }

    private float unfedShare(int c, double atCutOff) {
      if (unfed.isEmpty()) {
        return 1;
      }
      double fall = atCutOff - plastisol.noFlow();
      double all = volumes[c] * -Math.expm1(-plastisol.expansionHot() * Math.max(0, fall));
      return all > 0 ? (float) (unfed.get()[c] / all) : 0;
    }

    /** Spreads a group's loss over the slices where it still flows, softest first. */
    private void give(int g, double[] taken, double[] skin, double[] modulus) {
      double sum = 0;
      for (int s = 0; s < sections.count(); s++) {
        sum += skins[g].skin().softness(s);
      }
      for (int s = 0; s < sections.count() && sum > 0; s++) {
        if (skins[g].skin().isRound(s)) {
          double share = skins[g].skin().softness(s) / sum / sections.volume(s);
          skin[s] = skins[g].skin().thinnest(s);
          low.take(s, flows[g][0] * share, skin[s], modulus[s]);
          high.take(s, flows[g][1] * share, skin[s], modulus[s]);
          taken[s] += flows[g][2] * share;
          if (place[s] < 0) {
            place[s] = skins[g].outermost(s);
          }
        }
      }
    }

    /**
     * m3 that the gelled pocket still loses after the last step, down to the skin's temperature.
     */
    private double rest() {
      double late = 0;
      for (int i = 0; i < before.length; i++) {
        int c = pocket.cells()[i];
        double left = Math.min(plastisol.noFlow(), before[i]) - skinTemperature;
        late += volumes[c] * -Math.expm1(-plastisol.expansionGelled() * Math.max(0, left));
      }
      return late;
    }

    private Dent dent(int g, DentLobes lobes) {
      int best = -1;
      for (int i = 0; i < pocket.cells().length; i++) {
        int s = sections.slice(pocket.cells()[i]);
        if (pocket.peak()[i] == g && s >= 0 && (best < 0 || high.tacky(s) > high.tacky(best))) {
          best = s;
        }
      }
      if (best < 0 || place[best] < 0 || !lobes.takesFrom(best)) {
        Vec3 at = cavity.centre(pocket.peaks().get(g).cell());
        return new Dent(at, 0, 0, 0, 0);
      }
      double[] p = cavity.wallPoint(wallToward(best, lobes));
      double width = law.arc(sections.radius(best), low.firstSkin(best));
      return new Dent(
          new Vec3(p[0], p[1], p[2]), low.mildest(best), high.tacky(best), width, length(best));
    }

    /** Wall link of a slice that lies most to the lobe's side. */
    private int wallToward(int s, DentLobes lobes) {
      Vec3 centre = lobes.centre(s);
      Cavity.Walls links = cavity.walls();
      int best = walls.nearestWall(place[s]);
      double most = -1;
      for (int w = 0; w < links.count(); w++) {
        if (sections.slice(links.cell()[w]) == s && !links.mouth()[w]) {
          double[] p = cavity.wallPoint(w);
          Vec3 d = new Vec3(p[0], p[1], p[2]).minus(centre);
          double side = d.length() > 0 ? d.unit().dot(lobes.toward()) : -1;
          if (side > most) {
            most = side;
            best = w;
          }
        }
      }
      return best;
    }

    private double length(int best) {
      int from = best;
      int to = best;
      while (from > 0 && high.tacky(from - 1) > 0.5 * high.tacky(best)) {
        from--;
      }
      while (to + 1 < sections.count() && high.tacky(to + 1) > 0.5 * high.tacky(best)) {
        to++;
      }
      return (to - from + 1) * sections.thickness();
    }
  }
}
