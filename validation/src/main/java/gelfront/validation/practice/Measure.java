// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.practice;

/** What a claim is judged by. */
enum Measure {
  /** Per cent of the part's volume. */
  UNFED(0.02),
  /** mm, middle of the deepest dent's bounds. */
  DENT(0.02),
  /** mm, high bound of the deepest dent. */
  HIGH(0.02),
  /** mm that the sprue sinks after the part's cut-off. */
  SINKS(0.1);

  /** Differences below it are none: own judgement, by what voxels of 0.5 mm leave open. */
  final double floor;

  Measure(double floor) {
    this.floor = floor;
  }

  double of(Figures f) {
    return switch (this) {
      case UNFED -> f.unfedPercent();
      case DENT -> f.dentMm();
      case HIGH -> f.dentHighMm();
      case SINKS -> f.sinksMm();
    };
  }
}
