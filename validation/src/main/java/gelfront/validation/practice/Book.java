// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.practice;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** practices.json: what is said, and the cases that it is computed by. */
final class Book {
  private static final int CHIEF = 5;

  private final JsonNode root;

  Book() {
    try (InputStream in = Book.class.getResourceAsStream("/gelfront/validation/practices.json")) {
      root = new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  List<Practice> practices() {
    List<Practice> all = new ArrayList<>();
    root.get("practices").forEach(p -> all.add(Practice.of(p)));
    return all;
  }

  List<String> designs() {
    return names("designs");
  }

  /** What is known least: no-flow temperatures, unheld plungers; then viscosity and contact. */
  List<String> conditions(Practice p) {
    List<String> all = names("conditions");
    return p.everyCondition() ? all : all.subList(0, CHIEF);
  }

  private List<String> names(String what) {
    List<String> all = new ArrayList<>();
    root.get(what).fieldNames().forEachRemaining(all::add);
    return all;
  }

  /** The case file of each variant. */
  Map<String, String> cases(Practice p, String design, String condition) {
    Map<String, String> all = new LinkedHashMap<>();
    p.variants().forEach((name, set) -> all.put(name, text(set, design, condition)));
    return all;
  }

  private String text(JsonNode variant, String design, String condition) {
    ObjectNode settings = variant.deepCopy();
    JsonNode shape = settings.remove("shape");
    JsonNode shapes = root.get("designs").get(design);
    return new CaseText()
        .with(root.get("base"))
        .with(root.get("conditions").get(condition))
        .with(settings)
        .of(shapes.get(shape == null ? "as it is" : shape.asText()));
  }
}
