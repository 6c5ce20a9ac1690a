// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** A process that was told to end has no fault: its folders and hooks are being taken away. */
final class ErrorsTest {
  private final ByteArrayOutputStream told = new ByteArrayOutputStream();

  private int code(Exception e, boolean ending) {
    PrintStream err = new PrintStream(told, true, StandardCharsets.UTF_8);
    Errors errors = new Errors(new Console(err, err, false, () -> ending, false));
    CommandLine line =
        new CommandLine(new Gelfront(new Console(err, err, false, () -> false, false)));
    return errors.handleExecutionException(e, line, line.parseArgs());
  }

  @Test
  void whatGoesWrongWhileTheProcessEndsIsNoFault() {
    assertEquals(ExitCode.CANCELLED, code(new IllegalStateException("Shutdown in progress"), true));
    assertEquals(ExitCode.CANCELLED, code(new OutputFailure("out: can't be written"), true));
    assertEquals("cancelled\ncancelled\n", told.toString(StandardCharsets.UTF_8));
  }

  @Test
  void whatGoesWrongByItselfIs() {
    assertEquals(ExitCode.INTERNAL, code(new IllegalStateException("odd"), false));
    assertTrue(
        told.toString(StandardCharsets.UTF_8).startsWith("gelfront: a fault in the program"));
  }
}
