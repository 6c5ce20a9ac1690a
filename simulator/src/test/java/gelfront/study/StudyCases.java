// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

/** A small part that takes a second, measured with calipers, so that no file is needed. */
public final class StudyCases {
  public static final String BEAN =
      """
      name = "Bean"
      [[part.caliper]]
      distance = "0 mm"
      width = "6 mm"
      height = "6 mm"
      [[part.caliper]]
      distance = "8 mm"
      width = "12 mm"
      height = "12 mm"
      [[part.caliper]]
      distance = "20 mm"
      width = "5 mm"
      height = "5 mm"
      [gate]
      at = ["0 mm", "0 mm", "0 mm"]
      direction = [-1, 0, 0]
      size = "2 mm"
      land = "2 mm"
      [sprue]
      diameter = "8 mm"
      length = "20 mm"
      [block]
      wall = "10 mm"
      [plastisol]
      grade = "soft"
      [shot]
      temperature = "165 degC"
      [numerics]
      level = "quick"
      """;

  private StudyCases() {}
}
