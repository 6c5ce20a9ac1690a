// SPDX-License-Identifier: Apache-2.0
package gelfront.calibrate;

import gelfront.material.Plastisol;
import gelfront.setup.Case;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import java.util.List;

/** Properties that a cooling curve may tell, each by a number that the fit turns. */
public enum Quantity {
  START(
      "shot.temperature",
      "temperature at the start",
      "degC",
      false,
      new double[] {80, 200},
      "Log faster: the first seconds tell it."),
  CONDUCTIVITY(
      "plastisol.conductivity",
      "conductivity",
      "W/m K",
      true,
      new double[] {0.05, 0.8},
      "Log a thicker cup, in the middle, until it is within 10 K of the bath."),
  CONTACT(
      "block.contact",
      "contact with the wall",
      "W/m2 K",
      true,
      new double[] {50, 1e5},
      "Log a thin part or a tube of 6 to 8 mm: a thick one cools by its own conductivity alone."),
  GEL_MIDDLE(
      "plastisol.gel_start",
      "middle of gelling",
      "degC",
      false,
      new double[] {60, 175},
      "Log faster and with a finer thermocouple: the bend where it gels is small."),
  LATENT_HEAT(
      "plastisol.latent_heat",
      "heat of gelling",
      "kJ/kg",
      false,
      new double[] {0, 60},
      "Log faster and with a finer thermocouple: the bend where it gels is small.");

  final String key;
  final String words;
  final String unit;
  final String advice;
  private final boolean logarithm;
  private final double lowest;
  private final double highest;

  Quantity(String key, String words, String unit, boolean logarithm, double[] ends, String advice) {
    this.key = key;
    this.words = words;
    this.unit = unit;
    this.logarithm = logarithm;
    this.lowest = ends[0];
    this.highest = ends[1];
    this.advice = advice;
  }

  /** As the case has it. */
  double present(Case c) {
    Plastisol p = c.plastisol();
    return switch (this) {
      case START -> c.shot().temperature();
      case CONDUCTIVITY -> p.conductivity();
      case CONTACT -> c.block().contactConductance();
      case GEL_MIDDLE -> 0.5 * (p.gelStart() + p.gelEnd());
      case LATENT_HEAT -> p.latentHeat() * 1e-3;
    };
  }

  List<Change> changes(LoadedCase base, double value) {
    return switch (this) {
      case START -> List.of(set(key, value, "degC"));
      case CONDUCTIVITY -> List.of(set(key, value, "W/mK"));
      case CONTACT -> List.of(set(key, value, "W/m2K"));
      case LATENT_HEAT -> List.of(set(key, value, "kJ/kg"));
      case GEL_MIDDLE -> gelling(base.setup().plastisol(), value);
    };
  }

  /** As wide as it was; gel_start and gel_end keep no-flow between them. */
  private static List<Change> gelling(Plastisol p, double middle) {
    double half = 0.5 * (p.gelStart() - p.gelEnd());
    double moved = p.noFlow() + middle - 0.5 * (p.gelStart() + p.gelEnd());
    return List.of(
        set("plastisol.gel_start", middle + half, "degC"),
        set("plastisol.gel_end", middle - half, "degC"),
        set("plastisol.no_flow", moved, "degC"));
  }

  private static Change set(String key, double value, String unit) {
    return new Change.Set(key, Change.quantity(value, unit));
  }

  /** What the fit turns. */
  double turned(double value) {
    return logarithm ? Math.log(value) : value;
  }

  /** The value behind it. */
  double value(double turned) {
    return logarithm ? Math.exp(turned) : turned;
  }

  double lowest() {
    return turned(lowest);
  }

  double highest() {
    return turned(highest);
  }

  /** Change for a derivative: what moves the curve by far more than steps of a run do. */
  double step() {
    return switch (this) {
      case START -> 1;
      case CONDUCTIVITY -> 0.05;
      case CONTACT -> 0.2;
      case GEL_MIDDLE -> 2;
      case LATENT_HEAT -> 1;
    };
  }

  /**
   * Half width of what is known without a log, with 90 %, as the fit turns it: the material table's
   * ranges; of the start, what the hottest reading may be off.
   */
  double known() {
    return switch (this) {
      case START -> 10;
      case CONDUCTIVITY -> 0.17;
      case CONTACT -> 1.2;
      case GEL_MIDDLE -> 25;
      case LATENT_HEAT -> 2.5;
    };
  }
}
