// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import gelfront.base.Caution;
import gelfront.finding.Findings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What {@code run.json} holds: all of a run but its voxels, surface, case file and provenance. SI
 * units; for gelfront itself, not for people ({@code findings.json} is theirs). Infinities are
 * written as the strings {@code "Infinity"} and {@code "-Infinity"}, an absent number as null.
 *
 * @param format always {@link #FORMAT}
 * @param version of the format, {@link #VERSION} when written by this program
 * @param files names of all files that were written into the folder with it
 */
record RunJson(
    String format,
    int version,
    List<String> files,
    String name,
    Inputs inputs,
    Findings findings,
    Series series,
    Health health,
    List<Caution> cautions) {
  static final String FILE = "run.json";
  static final String FORMAT = "gelfront-result";
  static final int VERSION = 8;

  static RunJson of(StoredRun run, List<String> files) {
    return new RunJson(
        FORMAT,
        VERSION,
        files,
        run.name(),
        run.inputs(),
        run.findings(),
        run.series(),
        run.health(),
        run.cautions());
  }

  /** Reads the folder's {@code run.json}; the errors say what is wrong with the folder. */
  static RunJson read(Path folder) throws ResultException {
    Path file = folder.resolve(FILE);
    if (!Files.isRegularFile(file)) {
      throw new ResultException(folder + ": not a gelfront result, it holds no " + FILE);
    }
    return parse(mapper(), file);
  }

  private static RunJson parse(ObjectMapper mapper, Path file) throws ResultException {
    try {
      JsonNode tree = mapper.readTree(Files.readAllBytes(file));
      if (tree == null || !FORMAT.equals(tree.path("format").asText())) {
        throw new ResultException(file + ": not written by gelfront");
      }
      int version = tree.path("version").asInt();
      if (version < VERSION) {
        throw new ResultException(
            file + ": written by an older gelfront (format " + version + "): check the case again");
      }
      if (version > VERSION) {
        throw new ResultException(
            file
                + ": written by a newer gelfront (format "
                + version
                + "; this one reads "
                + VERSION
                + ")");
      }
      return mapper.treeToValue(tree, RunJson.class);
    } catch (ResultException e) {
      throw e;
    } catch (JsonProcessingException e) {
      throw new ResultException(file + ": damaged or truncated: check the case again", e);
    } catch (IOException e) {
      throw new ResultException(file + ": can't be read: " + e.getMessage(), e);
    }
  }

  /** Set so that every record survives: optionals, infinities, and nothing missing unnoticed. */
  static ObjectMapper mapper() {
    SimpleModule optionals = new SimpleModule();
    optionals.addSerializer(OptionalDouble.class, new WriteOptional());
    optionals.addDeserializer(OptionalDouble.class, new ReadOptional());
    return JsonMapper.builder()
        .addModule(optionals)
        .enable(SerializationFeature.INDENT_OUTPUT)
        .defaultPrettyPrinter(
            new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")))
        .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
        .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
        .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
        .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
        .build();
  }

  private static final class WriteOptional extends StdSerializer<OptionalDouble> {
    WriteOptional() {
      super(OptionalDouble.class);
    }

    @Override
    public void serialize(OptionalDouble value, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      if (value.isPresent()) {
        out.writeNumber(value.getAsDouble());
      } else {
        out.writeNull();
      }
    }
  }

  private static final class ReadOptional extends StdDeserializer<OptionalDouble> {
    ReadOptional() {
      super(OptionalDouble.class);
    }

    @Override
    public OptionalDouble deserialize(JsonParser in, DeserializationContext context)
        throws IOException {
      return OptionalDouble.of(_parseDoublePrimitive(in, context));
    }

    @Override
    public OptionalDouble getNullValue(DeserializationContext context) {
      return OptionalDouble.empty();
    }
  }
}
