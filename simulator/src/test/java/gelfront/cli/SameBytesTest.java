// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same case gives the same bytes, whoever calculates it, where, and on how many threads. */
final class SameBytesTest {
  private static final Locale LOCALE = Locale.getDefault();
  private static final TimeZone ZONE = TimeZone.getDefault();

  @TempDir private Path folder;

  @AfterEach
  void restore() {
    Locale.setDefault(LOCALE);
    TimeZone.setDefault(ZONE);
  }

  @Test
  void threadsLanguageAndTimeZoneChangeNothing() throws IOException {
    Path pea = Files.writeString(folder.resolve("pea.toml"), CommandLineTest.CASE);

    Map<String, Integer> one = result(pea, "a", "1", Locale.ROOT, "UTC");
    Map<String, Integer> turkish =
        result(pea, "b", "3", Locale.forLanguageTag("tr-TR"), "Asia/Kolkata");
    Map<String, Integer> arabic =
        result(pea, "c", "2", Locale.forLanguageTag("ar-EG"), "Pacific/Apia");

    assertEquals(one, turkish);
    assertEquals(one, arabic);
  }

  /** Hashes of its files, but of the one that says when and where. */
  private Map<String, Integer> result(
      Path pea, String name, String threads, Locale locale, String zone) throws IOException {
    Locale.setDefault(locale);
    TimeZone.setDefault(TimeZone.getTimeZone(zone));
    Path target = folder.resolve(name);
    Program.Answer a = Program.run("check", pea, "-o", target, "--threads", threads);
    assertEquals(0, a.code(), a::err);
    Map<String, Integer> files = new TreeMap<>();
    try (Stream<Path> list = Files.list(target)) {
      for (Path p : list.toList()) {
        String file = p.getFileName().toString();
        if (!file.equals("provenance.json")) {
          files.put(file, Arrays.hashCode(Files.readAllBytes(p)));
        }
      }
    }
    return files;
  }
}
