// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.practice;

import java.util.List;
import java.util.Map;

/**
 * Something that practice says of two or three variants. A difference counts from a twentieth of
 * the larger value on; "close" allows a tenth.
 *
 * <pre>
 *   less a b      a has less than b
 *   close a b     a and b differ little
 *   most a b c    going from a to b gains more than going from b to c
 * </pre>
 */
record Claim(String kind, List<String> variants) {
  private static final double COUNTS = 0.05;
  private static final double CLOSE = 0.1;

  /** What the computation says to it. */
  enum Outcome {
    AGREES,
    INDIFFERENT,
    DISAGREES
  }

  Claim {
    variants = List.copyOf(variants);
    int wants = kind.equals("most") ? 3 : 2;
    if (!List.of("less", "close", "most").contains(kind) || variants.size() != wants) {
      throw new IllegalArgumentException("no such claim: " + kind + " " + variants);
    }
  }

  Outcome outcome(Map<String, Figures> found, Measure by) {
    double[] v = variants.stream().mapToDouble(name -> by.of(found.get(name))).toArray();
    return switch (kind) {
      case "less" -> sign(v[1] - v[0], Math.max(v[0], v[1]), by.floor);
      case "most" -> sign(v[0] - v[1] - (v[1] - v[2]), Math.max(v[0], v[2]), by.floor);
      default ->
          Math.abs(v[0] - v[1]) <= Math.max(by.floor, CLOSE * Math.max(v[0], v[1]))
              ? Outcome.AGREES
              : Outcome.DISAGREES;
    };
  }

  private static Outcome sign(double gain, double of, double floor) {
    if (Math.abs(gain) <= Math.max(floor, COUNTS * of)) {
      return Outcome.INDIFFERENT;
    }
    return gain > 0 ? Outcome.AGREES : Outcome.DISAGREES;
  }

  String words() {
    List<String> v = variants;
    return switch (kind) {
      case "less" -> v.get(0) + " better than " + v.get(1);
      case "most" -> "more gained from " + v.get(0) + " to " + v.get(1) + " than on to " + v.get(2);
      default -> v.get(0) + " about as " + v.get(1);
    };
  }
}
