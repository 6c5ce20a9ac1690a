package gelfront.cli;

import gelfront.base.CancelledException;
import gelfront.mesh.MeshException;
import gelfront.setup.CaseException;
import gelfront.voxelize.VoxelException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The gelfront command. */
@Command(
    name = "gelfront",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Will this soft-plastic part come out dented, where, and which constriction is to blame?",
      "Computed from the cavity's STL, before metal is cut or when a mould dents."
    },
    footer = {
      "",
      "Hot plastisol, its fumes, steam and pressure hurt people. Local rules, the material's safety",
      "data sheet and trained people come before this program; never heat plastisol above 190 °C.",
      "",
      "Exit codes: 0 done (whatever the verdict), 1 a fault of the program, 2 wrong usage, 3 bad",
      "input, 4 the result could not be written, 130 cancelled."
    },
    subcommands = {
      CheckCommand.class,
      InspectCommand.class,
      DemoCommand.class,
      StartCommand.class,
      ProbeCommand.class,
      TimingCommand.class
    })
public final class Main {
  /** Runs a command line and ends the program. */
  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    System.exit(run(args, out, err));
  }

  /** Runs a command line; returns its exit code. */
  static int run(String[] args, PrintWriter out, PrintWriter err) {
    CommandLine line = new CommandLine(new Main());
    line.setOut(out).setErr(err);
    line.setExecutionExceptionHandler((e, cl, parsed) -> explain(e, err));
    line.setParameterExceptionHandler(
        (e, unused) -> {
          err.println("gelfront: " + e.getMessage());
          err.println("Try: gelfront --help");
          return ExitCodes.USAGE;
        });
    return args.length == 0 ? usage(line, out) : line.execute(args);
  }

  private static int usage(CommandLine line, PrintWriter out) {
    line.usage(out);
    return ExitCodes.USAGE;
  }

  private static int explain(Exception e, PrintWriter err) {
    if (System.getenv("GELFRONT_DEBUG") != null) {
      e.printStackTrace(err);
    }
    if (e instanceof CancelledException) {
      err.println("gelfront: " + e.getMessage());
      return ExitCodes.CANCELLED;
    }
    if (e instanceof CaseException) {
      err.println(e.getMessage());
      return ExitCodes.BAD_INPUT;
    }
    if (e instanceof MeshException || e instanceof VoxelException || e instanceof InputException) {
      err.println("gelfront: " + e.getMessage());
      return ExitCodes.BAD_INPUT;
    }
    if (e instanceof IOException) {
      err.println("gelfront: " + oneLine(e));
      return ExitCodes.NOT_WRITTEN;
    }
    err.println(
        "gelfront: a fault of the program: " + oneLine(e) + " (GELFRONT_DEBUG=1 shows where)");
    return ExitCodes.INTERNAL;
  }

  private static String oneLine(Exception e) {
    String what = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    return what.replaceAll("\\s+", " ");
  }
}
