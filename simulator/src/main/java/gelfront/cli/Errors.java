// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.base.CancelledException;
import gelfront.mesh.MeshException;
import gelfront.result.ResultException;
import gelfront.setup.CaseException;
import gelfront.voxelize.VoxelException;
import java.io.IOException;
import java.io.UncheckedIOException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/**
 * What goes wrong becomes words and an exit code; a stack trace only where it is asked for. What
 * goes wrong once the process is asked to end comes of that.
 */
final class Errors implements IExecutionExceptionHandler {
  private final Console console;

  Errors(Console console) {
    this.console = console;
  }

  @Override
  public int handleExecutionException(Exception e, CommandLine line, ParseResult parsed) {
    boolean stopped = console.cancelled().getAsBoolean() && !(e instanceof CancelledException);
    int code = stopped ? ExitCode.CANCELLED : code(e);
    String words = code == ExitCode.INTERNAL ? fault(e) : String.valueOf(e.getMessage());
    console.err().println(stopped ? "cancelled" : words);
    if (console.debug()) {
      e.printStackTrace(console.err());
    }
    return code;
  }

  private static int code(Exception e) {
    if (e instanceof CancelledException) {
      return ExitCode.CANCELLED;
    }
    if (e instanceof OutputFailure || e instanceof UncheckedIOException) { // a study's run is kept
      return ExitCode.OUTPUT;
    }
    boolean input =
        e instanceof CaseException
            || e instanceof MeshException
            || e instanceof VoxelException
            || e instanceof ResultException
            || e instanceof InputFailure
            || e instanceof IOException;
    return input ? ExitCode.INPUT : ExitCode.INTERNAL;
  }

  private static String fault(Exception e) {
    return "gelfront: a fault in the program: "
        + String.valueOf(e.getMessage()).lines().findFirst().orElse("")
        + " ("
        + e.getClass().getSimpleName()
        + "); please report it, with what GELFRONT_DEBUG=1 prints";
  }
}
