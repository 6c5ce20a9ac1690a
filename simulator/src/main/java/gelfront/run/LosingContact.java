// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.dent.SectionStrength;
import gelfront.feed.Feeding;
import gelfront.setup.Block;
import gelfront.state.ThermalState;

/**
 * Tells the heat where the skin has left the wall.
 *
 * @param feeding whose unfed volume the skin gave
 */
record LosingContact(Feeding feeding, SectionStrength skin, double most) implements StepObserver {
  static LosingContact of(Feeding feeding, SectionStrength skin, Block block) {
    return new LosingContact(feeding, skin, 1 / block.shrunkOff() - 1 / block.contactConductance());
  }

  @Override
  public void after(ThermalState state, double from) {
    if (most > 0 && feeding.sums().partUnfed() > 0) {
      skin.lostContact(feeding.unfed(), most, state.lostContact);
    }
  }
}
