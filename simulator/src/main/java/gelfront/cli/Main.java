// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** Start of the program. */
public final class Main {
  private Main() {}

  /** Runs and ends the process. */
  public static void main(String[] args) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
    boolean terminal = terminal();
    boolean debug = System.getenv("GELFRONT_DEBUG") != null;
    Interrupt interrupt = new Interrupt();
    Runtime.getRuntime().addShutdownHook(new Thread(interrupt::stop, "gelfront-stop"));
    int code = run(args, new Console(out, err, terminal, interrupt::asked, debug));
    out.flush();
    err.flush();
    interrupt.done();
    System.exit(code);
  }

  /** As the launcher sees it; where it can't tell, Java's own guess. */
  @SuppressWarnings("SystemConsoleNull") // gelfront.cmd asks newer Javas to answer as 17 does
  private static boolean terminal() {
    String told = System.getProperty("gelfront.terminal");
    return told == null ? System.console() != null : Boolean.parseBoolean(told);
  }

  /**
   * Runs without ending the process and without progress.
   *
   * @return the exit code
   */
  public static int run(String[] args, PrintStream out, PrintStream err) {
    return run(args, new Console(out, err, false, () -> false, false));
  }

  static int run(String[] args, Console console) {
    return commandLine(console).execute(args);
  }

  static CommandLine commandLine(Console console) {
    CommandLine line =
        new CommandLine(new Gelfront(console))
            .addSubcommand(new CalibrateCommand(console))
            .addSubcommand(new CavityCommand(console))
            .addSubcommand(new CheckCommand(console))
            .addSubcommand(new InspectCommand(console))
            .addSubcommand(new DemoCommand(console))
            .addSubcommand(new DoubtCommand(console))
            .addSubcommand(new StartCommand(console))
            .addSubcommand(new KeysCommand(console))
            .addSubcommand(new SizeCommand(console))
            .addSubcommand(new MapCommand(console))
            .addSubcommand(new StudyCommand(console))
            .addSubcommand(new RemediesCommand(console))
            .addSubcommand(new SeriesCommand(console))
            .addSubcommand(new CompareCommand(console))
            .addSubcommand(new SymptomsCommand(console))
            .addSubcommand(new ProbeCommand(console))
            .addSubcommand(new TimingCommand(console));
    return line.setOut(new java.io.PrintWriter(console.out(), true, StandardCharsets.UTF_8))
        .setErr(new java.io.PrintWriter(console.err(), true, StandardCharsets.UTF_8))
        .setUsageHelpAutoWidth(true)
        .setParameterExceptionHandler(new UsageErrors(console))
        .setExecutionExceptionHandler(new Errors(console));
  }
}
