// SPDX-License-Identifier: Apache-2.0
package gelfront.base;

/** Words with figures in them, told in the units that their reader prefers. */
@FunctionalInterface
public interface Told {
  /** The words, with lengths and temperatures in those units. */
  String in(Units units);

  /** In millimetres and °C, as files and command line have them. */
  default String metric() {
    return in(Units.METRIC);
  }

  /** Words that are the same in all units. */
  static Told of(String words) {
    return units -> words;
  }
}
