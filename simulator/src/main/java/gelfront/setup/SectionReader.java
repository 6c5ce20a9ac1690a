// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Dimension;
import java.util.List;
import java.util.OptionalDouble;

/** The keys shape, size and height of a gate or runner. */
final class SectionReader {
  private SectionReader() {}

  /**
   * @param name of what has the section
   * @param assumed collects what is filled in
   * @return something that stands in where a mistake was found
   */
  static Section read(CaseTable t, String name, List<Statement> assumed) {
    if (!t.has("shape")) {
      assumed.add(new Statement(name + ": shape", "round", "the most common one"));
    }
    String shape = t.choice("shape", List.of("round", "half-round", "rectangular")).orElse("round");
    double size = t.need("size", Dimension.LENGTH, 0.3e-3, 0.05);
    OptionalDouble height = t.quantity("height", Dimension.LENGTH, 0.3e-3, 0.05);
    if (shape.equals("rectangular") && height.isEmpty()) {
      t.mistake("shape", "a rectangular section needs a height");
    }
    if (!shape.equals("rectangular") && height.isPresent()) {
      t.mistake("height", "only a rectangular section has a height; this one is " + shape);
    }
    if (!(size > 0) || (shape.equals("rectangular") && height.isEmpty())) {
      return Section.round(1e-3);
    }
    return switch (shape) {
      case "half-round" -> Section.halfRound(size);
      case "rectangular" -> new Section(Section.Kind.RECTANGULAR, size, height.getAsDouble());
      default -> Section.round(size);
    };
  }
}
