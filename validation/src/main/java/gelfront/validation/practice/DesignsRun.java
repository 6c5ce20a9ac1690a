// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.practice;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Generated designs that dent, and what practice would do about each; a thin nose into a fat body
 * by every recipe. Writes the figures of each run, on one thread: some ten minutes.
 */
public final class DesignsRun {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** Designs that dent are gathered until there are so many. */
  private static final int DENTED = 16;

  private static final int MOST = 60;

  /** mm from which a dent is seen. */
  static final double SEEN = 0.2;

  private DesignsRun() {}

  /**
   * @param args file to write figures to; runs that it holds already are left as they are
   */
  public static void main(String[] args) throws IOException {
    Path file = Path.of(args[0]);
    ObjectNode all =
        Files.exists(file) ? (ObjectNode) JSON.readTree(file.toFile()) : JSON.createObjectNode();
    designs(all.withObject("/designs"), all, file);
    recipes(all.withObject("/recipes"), all, file);
  }

  private static void designs(ObjectNode designs, ObjectNode all, Path file) throws IOException {
    int dented = 0;
    for (int i = 1; i <= MOST && dented < DENTED; i++) {
      GeneratedDesign d = GeneratedDesign.of(i);
      ObjectNode one = designs.withObject("/" + i);
      Figures asItIs = figures(one, "as it is", d.text());
      if (asItIs.dentHighMm() >= SEEN) {
        dented++;
        figures(one, "gate +1 mm", d.gate(d.gate() + 1).text());
        figures(one, "gate +2 mm", d.gate(d.gate() + 2).text());
        figures(one, "sprue as wide as the part", d.sprue(d.thickest()).text());
        figures(one, "fed at the other end", d.fedAtOtherEnd().text());
      }
      Files.writeString(file, all.toPrettyString() + "\n");
    }
  }

  private static void recipes(ObjectNode recipes, ObjectNode all, Path file) throws IOException {
    for (int shot : new int[] {150, 162, 175}) {
      for (int mould : new int[] {20, 50, 80}) {
        for (int hold : new int[] {0, 15, 30}) {
          String name =
              String.format(Locale.ROOT, "shot %d °C, mould %d °C, hold %d s", shot, mould, hold);
          figures(recipes, name, thinNose(shot, mould, hold));
          Files.writeString(file, all.toPrettyString() + "\n");
        }
      }
    }
  }

  /** A nose of 5 mm for 25 mm, then a body of 16 mm, fed through the nose. */
  static String thinNose(int shot, int mould, int hold) {
    double[] x = {0, 12, 25, 38, 55, 65};
    double[] d = {5, 5, 5, 16, 16, 6};
    return new GeneratedDesign(x, d, 4, 10, hold, false)
        .text()
        .replace("temperature = \"165 degC\"", "temperature = \"" + shot + " degC\"")
        .replace("start = \"35 degC\"", "start = \"" + mould + " degC\"");
  }

  private static Figures figures(ObjectNode of, String name, String text) throws IOException {
    if (!of.has(name)) {
      of.set(name, JSON.valueToTree(Figures.of(text)));
    }
    return JSON.treeToValue(of.get(name), Figures.class);
  }
}
