// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

/** What the picture is about. */
public enum Mode {
  SETUP(
      "Mould", "the part with its gate, sprue and block; click on the part to put the gate there"),
  OPEN("Cut open", "set times on a cut through the part; the slider below plays the freezing"),
  CELLS("Late cells", "every cell by the time it sets; the slider hides what has set before"),
  SKIN("Thick spots", "the outside, coloured by the latest time met on the way straight in"),
  POCKETS("Pockets", "what was still liquid when it was cut off, numbered as in the report"),
  DENTS("Dents", "your own mesh as it comes out, dents as deep as the slider says"),
  FILL(
      "Filling",
      "when the hot liquid comes to each place; trapped air by letter, apart from dents");

  private final String label;
  private final String meaning;

  Mode(String label, String meaning) {
    this.label = label;
    this.meaning = meaning;
  }

  /** On its button. */
  public String label() {
    return label;
  }

  /** In a sentence. */
  public String meaning() {
    return meaning;
  }

  /** Whether it needs a result. */
  public boolean ofAResult() {
    return this != SETUP;
  }

  /** Whether it shows the inside, and so is cut open by itself. */
  public boolean inside() {
    return this == OPEN || this == CELLS || this == FILL;
  }

  /** Whether its colours are times. */
  public boolean showsTimes() {
    return this == OPEN || this == CELLS || this == SKIN || this == FILL;
  }
}
