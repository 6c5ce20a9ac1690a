// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.practice;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A case file from settings by table and key, "gate.size", or by key alone, "up"; later ones
 * replace earlier ones. A setting that is a table itself becomes one of a list of tables, one that
 * is false goes.
 */
final class CaseText {
  private final Map<String, Map<String, JsonNode>> tables = new LinkedHashMap<>();

  CaseText with(JsonNode settings) {
    settings
        .properties()
        .forEach(
            e -> {
              int dot = e.getKey().lastIndexOf('.');
              String table = dot < 0 ? "" : e.getKey().substring(0, dot);
              tables
                  .computeIfAbsent(table, t -> new LinkedHashMap<>())
                  .put(e.getKey().substring(dot + 1), e.getValue());
            });
    return this;
  }

  /**
   * @param part rows of distance and diameter, mm
   */
  String of(JsonNode part) {
    Map<String, Map<String, JsonNode>> named = new LinkedHashMap<>(tables);
    Map<String, JsonNode> first = named.remove("");
    StringBuilder text = new StringBuilder(first == null ? "" : lines(first));
    for (JsonNode row : part) {
      text.append("[[part.caliper]]\n");
      text.append("distance = \"" + row.get(0) + " mm\"\n");
      text.append("width = \"" + row.get(1) + " mm\"\n");
      text.append("height = \"" + row.get(1) + " mm\"\n");
    }
    named.forEach((table, keys) -> text.append(table(table, keys)));
    return text.toString();
  }

  private static String table(String name, Map<String, JsonNode> keys) {
    StringBuilder text = new StringBuilder("[" + name + "]\n");
    List<String> lists = new ArrayList<>();
    keys.forEach(
        (key, value) -> {
          if (value.isObject()) {
            lists.add("[[" + name + "." + key + "]]\n" + lines(value));
          } else if (!value.isBoolean()) {
            text.append(line(key, value));
          }
        });
    lists.forEach(text::append);
    return text.toString();
  }

  private static String lines(JsonNode table) {
    StringBuilder text = new StringBuilder();
    table.properties().forEach(e -> text.append(line(e.getKey(), e.getValue())));
    return text.toString();
  }

  private static String lines(Map<String, JsonNode> keys) {
    StringBuilder text = new StringBuilder();
    keys.forEach((key, value) -> text.append(line(key, value)));
    return text.toString();
  }

  private static String line(String key, JsonNode value) {
    return key + " = " + value + "\n";
  }
}
