// SPDX-License-Identifier: Apache-2.0
package gelfront.doubt;

import gelfront.base.Dimension;

/**
 * A property of plastisol or contact that the material table gives a range for.
 *
 * @param key of the table, which is the case file's, too
 * @param words for people
 * @param dimension of its values
 * @param unit to print and to write in
 * @param decades whether its range is one of decades
 * @param advice how a maker finds out
 */
record Property(
    String key, String words, Dimension dimension, String unit, boolean decades, String advice) {
  /** Of the plastisol, but for those that follow from others or matter to no dent. */
  static java.util.List<Property> plastisol() {
    return java.util.List.of(
        new Property(
            "no_flow",
            "no-flow temperature",
            Dimension.TEMPERATURE,
            "degC",
            false,
            "Let a heated cup of it cool with a thermometer in it and lift a rod now and then: note"
                + " the temperature at which it no longer runs off."),
        new Property(
            "viscosity_165",
            "viscosity at 165 °C",
            Dimension.VISCOSITY,
            "Pas",
            true,
            "Time how long a known amount takes to run out of a funnel at shot temperature, and"
                + " compare with an oil of known viscosity."),
        new Property(
            "expansion_hot",
            "shrinkage while liquid",
            Dimension.EXPANSION,
            "1/K",
            false,
            "Mark the level in a narrow heatproof tube at two temperatures above no-flow."),
        new Property(
            "expansion_gelled",
            "shrinkage once set",
            Dimension.EXPANSION,
            "1/K",
            false,
            "Measure a part's length warm, just out of the mould, and cold, with both"
                + " temperatures."),
        new Property(
            "youngs_modulus",
            "stiffness of the set part",
            Dimension.STIFFNESS,
            "kPa",
            true,
            "Hang a small weight on a strip of known section and measure how far it stretches."),
        new Property(
            "conductivity",
            "conductivity",
            Dimension.CONDUCTIVITY,
            "W/mK",
            false,
            "Log the temperature in the middle of a cup of known size that cools in water."),
        new Property(
            "specific_heat",
            "specific heat",
            Dimension.SPECIFIC_HEAT,
            "J/kgK",
            false,
            "Ask the maker of the plastisol; a cooling curve tells only conductivity over heat."),
        new Property(
            "latent_heat",
            "heat of gelling",
            Dimension.SPECIFIC_ENERGY,
            "J/kg",
            false,
            "A bump in a logged cooling curve between start and end of gelling tells it."));
  }

  /** Between plastisol and mould. */
  static Property contact() {
    return new Property(
        "contact",
        "contact with the mould",
        Dimension.FILM,
        "W/m2K",
        true,
        "A thermocouple in the middle of a thin part tells it, a thick one doesn't.");
  }

  /** Where the skin has left the mould. */
  static Property shrunkOff() {
    return new Property(
        "contact_shrunk_off",
        "contact once shrunk off",
        Dimension.FILM,
        "W/m2K",
        true,
        "Two thermocouples tell it, in the part's skin and in the mould beside it, after the skin has"
            + " come off.");
  }

  double fromSi(double si) {
    double zero = dimension.toSi(0, unit);
    return (si - zero) / (dimension.toSi(1, unit) - zero);
  }
}
