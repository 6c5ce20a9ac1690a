// SPDX-License-Identifier: Apache-2.0
package gelfront.base;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What a quantity measures, and the units people write it in. SI (and °C) inside. A "mil" is a
 * thousandth of an inch to some and a millimetre to others, so it is no unit here; "thou" is.
 */
public enum Dimension {
  LENGTH(
      "12 mm",
      "mm 1e-3|cm 1e-2|m 1|in 0.0254|inch 0.0254|inches 0.0254|\" 0.0254|thou 2.54e-5|ft 0.3048|um 1e-6|µm 1e-6"),
  TEMPERATURE(
      "165 degC",
      "degC 1|°C 1|C 1|degF 0.5555555555555556|°F 0.5555555555555556|F 0.5555555555555556|K 1"),
  TIME("20 s", "s 1|sec 1|seconds 1|min 60|minutes 60|h 3600"),
  PRESSURE("20 kPa", "Pa 1|kPa 1e3|MPa 1e6|bar 1e5|mbar 100|psi 6894.757293168"),
  FORCE("2 kN", "N 1|kN 1e3|lbf 4.4482216152605|kgf 9.80665"),
  VOLUME(
      "100 ml",
      "ml 1e-6|mL 1e-6|cm3 1e-6|cc 1e-6|l 1e-3|L 1e-3|oz 2.95735295625e-5|fl oz 2.95735295625e-5|in3 1.6387064e-5"),
  ANGLE("2 deg", "deg 0.017453292519943295|° 0.017453292519943295|rad 1"),
  DENSITY("1030 kg/m3", "kg/m3 1|g/cm3 1e3|g/ml 1e3"),
  SPECIFIC_HEAT("1900 J/kgK", "J/kgK 1|J/kg/K 1|kJ/kgK 1e3"),
  CONDUCTIVITY("0.145 W/mK", "W/mK 1|W/m/K 1"),
  FILM("10 W/m2K", "W/m2K 1|W/m2/K 1"),
  SPECIFIC_ENERGY("1300 J/kg", "J/kg 1|kJ/kg 1e3"),
  EXPANSION("7e-4 1/K", "1/K 1|/K 1"),
  STIFFNESS("50 kPa", "Pa 1|kPa 1e3|MPa 1e6"),
  VISCOSITY("1.5 Pas", "Pas 1|Pa.s 1|mPas 1e-3|cP 1e-3"),
  SHARE("5 %", "% 0.01|percent 0.01");

  private final String example;

  private final String names;

  @SuppressWarnings("ImmutableEnumChecker") // filled in the constructor, read ever after
  private final Map<String, Double> units = new LinkedHashMap<>();

  Dimension(String example, String units) {
    this.example = example;
    List<String> shown = new ArrayList<>();
    for (String unit : units.split("\\|", -1)) {
      int space = unit.lastIndexOf(' ');
      shown.add(unit.substring(0, space));
      this.units.put(plain(unit.substring(0, space)), Double.valueOf(unit.substring(space + 1)));
    }
    names = String.join(", ", shown);
  }

  /** How a maker would write one. */
  public String example() {
    return example;
  }

  /** Units known, separated by commas. */
  public String unitNames() {
    return names;
  }

  /** The units known, the most usual one first. */
  public List<String> unitList() {
    return List.of(names.split(", ", -1));
  }

  /** Whether a unit is one of this dimension. */
  public boolean knows(String unit) {
    return units.containsKey(plain(unit));
  }

  /** One spelling for each unit: "J/(kg K)", "J/kg·K" and "J per kg K" are all "J/kgK". */
  private static String plain(String unit) {
    return unit.replaceAll("\\bper ", "/")
        .replaceAll("[\\s_()·*.^]", "")
        .replace('²', '2')
        .replace('³', '3')
        .replace('\u03bc', 'µ') // the Greek letter for the micro sign
        .replace('º', '°');
  }

  /**
   * A number in a unit as SI (°C for temperatures).
   *
   * @throws IllegalArgumentException if the unit is none of this dimension
   */
  public double toSi(double value, String unit) {
    String plain = plain(unit);
    Double factor = units.get(plain);
    if (factor == null) {
      throw new IllegalArgumentException(unknown(unit));
    }
    if (this == TEMPERATURE) {
      return plain.endsWith("F")
          ? (value - 32) * factor
          : plain.equals("K") ? value - 273.15 : value;
    }
    return value * factor;
  }

  /** Says that a unit is none of this dimension. */
  String unknown(String unit) {
    String what = name().toLowerCase(Locale.ROOT).replace('_', ' ');
    return "\"" + unit + "\" is not a unit of " + what + "; known: " + unitNames();
  }
}
