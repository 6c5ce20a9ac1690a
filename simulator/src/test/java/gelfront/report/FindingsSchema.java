// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;

/** The schema that README points to, in the hands of a validator that is none of ours. */
public final class FindingsSchema {
  private FindingsSchema() {}

  /** What is wrong with it; empty if nothing is. */
  public static List<String> complaints(JsonNode findings) throws IOException {
    try (InputStream in = FindingsJson.class.getResourceAsStream("findings.schema.json")) {
      return JsonSchemaFactory.getInstance(VersionFlag.V202012)
          .getSchema(in)
          .validate(findings)
          .stream()
          .map(String::valueOf)
          .toList();
    }
  }
}
