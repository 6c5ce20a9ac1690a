// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;

/** A command in a Java process of its own, with this one's options: nothing is warm. */
final class FreshProcess {
  private FreshProcess() {}

  /**
   * s from the start of a process.
   *
   * @param first until it said its first line
   * @param end until it ended
   */
  record Took(double first, double end) {}

  /**
   * Each in the median.
   *
   * @param arguments of a run, by its number from 0
   * @throws IOException if the command doesn't end well
   */
  static Took median(int runs, IntFunction<List<String>> arguments) throws IOException {
    double[] first = new double[runs];
    double[] end = new double[runs];
    for (int i = 0; i < runs; i++) {
      Took took = once(arguments.apply(i));
      first[i] = took.first;
      end[i] = took.end;
    }
    Arrays.sort(first);
    Arrays.sort(end);
    return new Took(first[runs / 2], end[runs / 2]);
  }

  private static Took once(List<String> arguments) throws IOException {
    long from = System.nanoTime();
    Process process = start(arguments);
    try (BufferedReader said = process.inputReader(StandardCharsets.UTF_8)) {
      String line = said.readLine();
      double first = (System.nanoTime() - from) * 1e-9;
      said.lines().forEach(more -> {});
      int code = end(process);
      if (line == null || code != ExitCode.OK) {
        throw new IOException(arguments.get(0) + " in a process of its own ended with " + code);
      }
      return new Took(first, (System.nanoTime() - from) * 1e-9);
    }
  }

  private static Process start(List<String> arguments) throws IOException {
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    List<String> command = new ArrayList<>(List.of(java.toString()));
    command.addAll(ManagementFactory.getRuntimeMXBean().getInputArguments());
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
    command.addAll(arguments);
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
  }

  private static int end(Process process) {
    try {
      return process.waitFor();
    } catch (InterruptedException e) {
      process.destroy();
      Thread.currentThread().interrupt();
      return ExitCode.CANCELLED;
    }
  }
}
