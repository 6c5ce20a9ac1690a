// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.answer.VoxelDoubt.At;
import gelfront.answer.VoxelDoubt.Hold;
import gelfront.finding.Constriction;
import gelfront.finding.Severity;
import gelfront.mesh.Vec3;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class VoxelDoubtTest {
  private static final double VISIBLE = 0.2e-3;

  private static At at(double low, double high, Constriction blamed) {
    Severity s =
        low >= VISIBLE ? Severity.WILL_DENT : high >= VISIBLE ? Severity.MAY_DENT : Severity.CLEAN;
    return new At("normal", 0.5e-3, s, low, high, Optional.ofNullable(blamed));
  }

  private static Constriction gate(double x) {
    return new Constriction(Constriction.Kind.GATE, new Vec3(x, 0, 0), 3e-3, 12);
  }

  private static Hold hold(At fine, At rough) {
    return new VoxelDoubt(VISIBLE, fine, Optional.of(rough), "").hold();
  }

  @Test
  void aVerdictHangsHoldsOrIsClose() {
    At fine = at(0.3e-3, 0.8e-3, gate(0));

    assertEquals(Hold.HANGS, hold(fine, at(0.19e-3, 0.8e-3, gate(0))));
    assertEquals(Hold.HOLDS, hold(fine, at(0.25e-3, 0.7e-3, gate(0))));
    assertEquals(Hold.CLOSE, hold(fine, at(0.42e-3, 0.9e-3, gate(0))));
    assertEquals(Hold.HOLDS, hold(at(0, 0, null), at(0, 0, null)));
    assertEquals(Hold.CLOSE, hold(at(0, 0.15e-3, gate(0)), at(0, 0.05e-3, gate(0))));
  }

  @Test
  void whatIsToBlameIsComparedByKindAndPlace() {
    At fine = at(0.3e-3, 0.8e-3, gate(0));
    Constriction neck = new Constriction(Constriction.Kind.NECK, Vec3.ZERO, 3e-3, 12);

    assertTrue(new VoxelDoubt(VISIBLE, fine, Optional.of(at(0, 0, gate(2e-3))), "").sameBlamed());
    assertFalse(new VoxelDoubt(VISIBLE, fine, Optional.of(at(0, 0, gate(4e-3))), "").sameBlamed());
    assertFalse(new VoxelDoubt(VISIBLE, fine, Optional.of(at(0, 0, neck)), "").sameBlamed());
    assertTrue(new VoxelDoubt(VISIBLE, fine, Optional.of(at(0, 0, null)), "").sameBlamed());
  }

  @Test
  void withoutACoarserRunThereIsAReason() {
    At fine = at(0, 0, null);

    assertEquals(
        Hold.UNKNOWN, new VoxelDoubt(VISIBLE, fine, Optional.empty(), "too narrow").hold());
    assertThrows(
        IllegalArgumentException.class, () -> new VoxelDoubt(VISIBLE, fine, Optional.empty(), ""));
  }
}
