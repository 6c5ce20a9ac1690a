// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.dent.SectionStrength;
import gelfront.feed.Feeding;
import gelfront.grid.Fold;
import gelfront.setup.Block;
import gelfront.state.ThermalState;

/**
 * Tells the heat where the skin has left the wall.
 *
 * @param feeding whose unfed volume the skin gave, of what is left of the folded model
 * @param skin of the whole
 */
record LosingContact(Feeding feeding, Fold fold, SectionStrength skin, double most)
    implements StepObserver {
  static LosingContact of(Feeding feeding, Fold fold, SectionStrength skin, Block block) {
    double most = 1 / block.shrunkOff() - 1 / block.contactConductance();
    return new LosingContact(feeding, fold, skin, most);
  }

  @Override
  public void after(ThermalState state, double from) {
    if (most > 0 && feeding.sums().partUnfed() > 0) {
      skin.lostContact(fold.unfold(feeding.unfed()), most, state.lostContact);
    }
  }
}
