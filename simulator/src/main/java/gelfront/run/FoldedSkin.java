// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.feed.SkinStrength;
import gelfront.grid.Fold;

/** The skin of a whole model, asked from what is left of it. */
final class FoldedSkin implements SkinStrength {
  private final Fold fold;
  private final SkinStrength whole;
  private final double[] temperature;
  private final double[] given;
  private final double[] bears;

  FoldedSkin(Fold fold, SkinStrength whole) {
    this.fold = fold;
    this.whole = whole;
    temperature = new double[fold.cell().length];
    given = new double[temperature.length];
    bears = new double[fold.kept().length];
  }

  @Override
  public double[] bears(double[] temperatureLeft, double[] givenLeft) {
    Fold.spread(temperatureLeft, fold.cell(), temperature);
    Fold.spread(givenLeft, fold.cell(), given);
    Fold.spread(whole.bears(temperature, given), fold.kept(), bears);
    return bears;
  }
}
