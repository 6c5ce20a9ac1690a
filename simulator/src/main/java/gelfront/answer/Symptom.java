// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Something that a maker sees, of one aspect. */
public enum Symptom {
  TEXTURED(Aspect.SURFACE, "the cavity's texture is on it"),
  SMOOTH(Aspect.SURFACE, "it is smooth or polished, without the cavity's texture"),
  CAVED(Aspect.SHAPE, "a broad, shallow hollow without an edge"),
  ROUND(Aspect.SHAPE, "a bubble or pit with rounded rims"),
  MISSING(Aspect.SHAPE, "a piece is missing"),
  THICK(Aspect.PLACE, "over a thick place"),
  END(Aspect.PLACE, "at an end, fin or tail, far from the gate"),
  TOP(Aspect.PLACE, "at a place that is highest while it is poured"),
  GATE(Aspect.PLACE, "at the gate"),
  SEAM(Aspect.PLACE, "along the parting line"),
  EVERY(Aspect.WHEN, "in every shot"),
  FIRST(Aspect.WHEN, "in the first few shots only"),
  SOME(Aspect.WHEN, "now and then"),
  SINKING(Aspect.SPRUE, "the sprue keeps sinking"),
  LEVEL(Aspect.SPRUE, "the sprue stays level"),
  CURES(Aspect.HOLDING, "holding the plunger cures it"),
  NOTHING(Aspect.HOLDING, "holding the plunger changes nothing");

  private final Aspect aspect;
  private final String words;

  Symptom(Aspect aspect, String words) {
    this.aspect = aspect;
    this.words = words;
  }

  /** What a symptom is seen by; one of an aspect at most. */
  public enum Aspect {
    SURFACE,
    SHAPE,
    PLACE,
    WHEN,
    SPRUE,
    HOLDING;

    /** As it is written on a command line. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** All that can be seen by it. */
    public List<Symptom> symptoms() {
      return Arrays.stream(Symptom.values()).filter(s -> s.aspect == this).toList();
    }
  }

  public Aspect aspect() {
    return aspect;
  }

  /** What is seen. */
  public String words() {
    return words;
  }

  /** As it is written on a command line. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
