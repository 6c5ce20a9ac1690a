// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.mesh.Vec3;

/** JSON as the commands print it. What is not a finite number becomes null. */
final class Json {
  private static final double MM = 1e3;

  private Json() {}

  static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }

  static ArrayNode array() {
    return JsonNodeFactory.instance.arrayNode();
  }

  /** Puts a number, rounded to what is worth printing, or null. */
  static void put(ObjectNode to, String key, double value) {
    if (Double.isFinite(value)) {
      to.put(key, rounded(value));
    } else {
      to.putNull(key);
    }
  }

  static ArrayNode numbers(double... values) {
    ArrayNode a = array();
    for (double v : values) {
      if (Double.isFinite(v)) {
        a.add(rounded(v));
      } else {
        a.addNull();
      }
    }
    return a;
  }

  /** A place in millimetres. */
  static ArrayNode mm(Vec3 p) {
    return numbers(p.x() * MM, p.y() * MM, p.z() * MM);
  }

  /** To eight digits: what floats and unit factors leave behind is not worth showing. */
  private static double rounded(double value) {
    return value == 0
        ? 0
        : new java.math.BigDecimal(value).round(new java.math.MathContext(8)).doubleValue();
  }

  static String text(JsonNode node) {
    try {
      return new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT).writeValueAsString(node);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
