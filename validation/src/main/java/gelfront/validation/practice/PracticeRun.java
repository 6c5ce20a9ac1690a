// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.practice;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Runs all cases of the book on one thread and writes their figures: by practice, design, condition
 * and variant. Some ten minutes.
 */
public final class PracticeRun {
  private static final ObjectMapper JSON = new ObjectMapper();

  private PracticeRun() {}

  /**
   * @param args file to write figures to, written anew after each practice; practices that it holds
   *     already are left as they are
   */
  public static void main(String[] args) throws IOException {
    Path file = Path.of(args[0]);
    ObjectNode all =
        Files.exists(file) ? (ObjectNode) JSON.readTree(file.toFile()) : JSON.createObjectNode();
    Book book = new Book();
    Map<String, Figures> known = new HashMap<>();
    for (Practice p : book.practices()) {
      if (p.cannot().isEmpty() && !all.has(p.says())) {
        all.set(p.says(), figures(book, p, known));
        Files.writeString(file, all.toPrettyString() + "\n");
      }
    }
  }

  private static ObjectNode figures(Book book, Practice p, Map<String, Figures> known) {
    ObjectNode of = JSON.createObjectNode();
    for (String design : book.designs()) {
      ObjectNode rows = of.putObject(design);
      for (String condition : book.conditions(p)) {
        ObjectNode row = rows.putObject(condition);
        found(book.cases(p, design, condition), known)
            .forEach((name, f) -> row.set(name, JSON.valueToTree(f)));
      }
    }
    return of;
  }

  static Map<String, Figures> found(Map<String, String> cases, Map<String, Figures> known) {
    Map<String, Figures> found = new LinkedHashMap<>();
    cases.forEach((name, text) -> found.put(name, known.computeIfAbsent(text, Figures::of)));
    return found;
  }
}
