// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.practice;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A practice.
 *
 * @param says in words
 * @param variants settings by name; "shape" among them is the part's
 * @param everyCondition whether it is computed under all conditions, not the chief ones alone
 * @param cannot why a case file can't say it; empty: it can
 * @param found what decides, in words, from the figures
 */
record Practice(
    String says,
    List<Measure> measures,
    Map<String, JsonNode> variants,
    List<Claim> claims,
    boolean everyCondition,
    String cannot,
    String found) {

  static Practice of(JsonNode node) {
    Map<String, JsonNode> variants = new LinkedHashMap<>();
    node.path("variants").properties().forEach(e -> variants.put(e.getKey(), e.getValue()));
    List<Claim> claims = new ArrayList<>();
    for (JsonNode c : node.path("claims")) {
      List<String> names = new ArrayList<>();
      c.forEach(n -> names.add(n.asText()));
      claims.add(new Claim(names.get(0), names.subList(1, names.size())));
    }
    List<Measure> measures = new ArrayList<>();
    node.path("measures").forEach(m -> measures.add(Measure.valueOf(m.asText())));
    return new Practice(
        node.get("says").asText(),
        measures,
        variants,
        claims,
        node.path("every_condition").asBoolean(),
        node.path("cannot").asText(""),
        node.path("found").asText(""));
  }
}
