// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;

/** The program as its users see it: arguments in, words and an exit code out. */
final class Program {
  private Program() {}

  /**
   * What a run left.
   *
   * @param out printed as the answer
   * @param err printed as a complaint
   */
  record Answer(int code, String out, String err) {}

  /** Runs it; arguments are told as texts. */
  static Answer run(Object... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    String[] texts = Stream.of(args).map(String::valueOf).toArray(String[]::new);
    int code = Main.run(texts, print(out), print(err));
    return new Answer(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  static PrintStream print(ByteArrayOutputStream to) {
    return new PrintStream(to, true, StandardCharsets.UTF_8);
  }
}
