// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.grid.Cavity;
import gelfront.material.MaterialTable;
import gelfront.material.Plastisol;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.voxelize.CavityBuilder;
import gelfront.voxelize.Labelled;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A round bar that is firm outside a core, cold or hot by steps. */
final class SectionStrengthTest {
  private static final Plastisol SOFT = MaterialTable.builtIn().plastisol("soft");
  private static final double RADIUS = 6e-3;
  private static final double LEAST = 500;
  private static final double FIRM = 60;
  private static final double HOT = 160;

  private final Cavity bar =
      CavityBuilder.build(
          List.of(
              new Labelled(
                  Cavity.Region.PART,
                  Solids.cylinder(Vec3.ZERO, new Vec3(30e-3, 0, 0), RADIUS, RADIUS, 96))),
          0.5e-3,
          Optional.empty(),
          Progress.NONE);
  private final int n = bar.count();
  private final SkinLaw law = new SkinLaw(SOFT.densityHot());
  private final double stiff = GelModulus.of(SOFT).at(FIRM);

  private SectionStrength strength() {
    short[] of = new short[n];
    Arrays.fill(of, (short) 1);
    return new SectionStrength(bar, of, 1, SOFT, LEAST);
  }

  /** Firm but for a core of {@code radius} about y = {@code off}. */
  private double[] core(double radius, double off) {
    double[] t = new double[n];
    for (int c = 0; c < n; c++) {
      Vec3 p = bar.centre(c);
      t[c] = Math.hypot(p.y() - off, p.z()) < radius ? HOT : FIRM;
    }
    return t;
  }

  /** A share of each cell's volume. */
  private double[] given(double e) {
    double[] given = bar.volumes().clone();
    for (int c = 0; c < n; c++) {
      given[c] *= e;
    }
    return given;
  }

  private double inTheMiddle(double[] bears) {
    return bears[bar.nearest(new Vec3(15e-3, 0, 0))];
  }

  @Test
  void aSkinThatHasGivenNothingBearsTheLeast() {
    double[] bears = strength().bears(core(3e-3, 0), given(0));
    assertEquals(LEAST, inTheMiddle(bears), 1e-9);
  }

  @Test
  void whatItBearsGrowsByTheAllRoundLawUpToTheTightRingsPeak() {
    SectionStrength s = strength();
    s.bears(core(3e-3, 0), given(0));
    double e = 0.06;
    double exact = law.allRound(RADIUS, 3e-3, stiff, e);
    assertTrue(exact > LEAST);
    assertEquals(exact, inTheMiddle(s.bears(core(3e-3, 0), given(e))), 0.07 * exact);
    double peak = law.confinedPeak(RADIUS, 3e-3, stiff);
    assertEquals(peak, inTheMiddle(s.bears(core(3e-3, 0), given(0.5))), 0.07 * peak);
  }

  @Test
  void layersThatSetLaterAreStrainedLess() {
    SectionStrength atOnce = strength();
    SectionStrength grown = strength();
    grown.bears(core(4.5e-3, 0), given(0));
    grown.bears(core(4.5e-3, 0), given(0.02));
    double late = inTheMiddle(grown.bears(core(2.5e-3, 0), given(0.04)));
    double early = inTheMiddle(atOnce.bears(core(2.5e-3, 0), given(0.04)));
    double sum =
        law.allRound(RADIUS, 1.5e-3, stiff, 0.02) + law.allRound(RADIUS, 3.5e-3, stiff, 0.02);
    assertEquals(sum, late, 0.07 * sum);
    assertTrue(early > 1.3 * late);
  }

  @Test
  void contactIsLostAsByAirAllRoundAndNoFurtherThanTold() {
    float[] lost = new float[n];
    int middle = bar.nearest(new Vec3(15e-3, 0, 0));
    strength().lostContact(given(0.01), 1, lost);
    double air = 0.01 * RADIUS / 2;
    assertEquals(air / 0.028, lost[middle], 0.02 * air / 0.028);
    strength().lostContact(given(0.01), 5e-4, lost);
    assertEquals(5e-4, lost[middle], 1e-9);
    strength().lostContact(given(0), 5e-4, lost);
    assertEquals(0, lost[middle], 0);
  }

  @Test
  void theThinnestSideCounts() {
    double middle = inTheMiddle(strength().bears(core(3e-3, 0), given(0.08)));
    double aside = inTheMiddle(strength().bears(core(3e-3, 1.5e-3), given(0.08)));
    double exact = law.allRound(RADIUS, 1.5e-3, stiff, 0.08);
    assertTrue(aside < 0.6 * middle);
    assertEquals(Math.max(LEAST, exact), aside, 0.1 * middle);
  }
}
