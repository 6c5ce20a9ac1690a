// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.setup.CaseFile;
import gelfront.setup.LoadedCase;
import gelfront.timing.StandardCase;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** {@code check} on the standard case, each time in a new Java process with this one's options. */
final class ColdStart {
  private final Path folder;
  private final Path file;

  /**
   * @param folder that mesh, case and result go to
   */
  ColdStart(Path folder) throws IOException {
    this.folder = folder;
    file = Files.writeString(folder.resolve("standard.toml"), StandardCase.CASE);
    try (OutputStream out = Files.newOutputStream(folder.resolve("standard.stl"))) {
      MeshFiles.writeStl(StandardCase.body(128), out, LengthUnit.MM);
    }
  }

  /** The standard case, read. */
  LoadedCase loaded() {
    return CaseFile.read(file);
  }

  /**
   * s from the start of a process.
   *
   * @param verdict until it said its verdict
   * @param report until it ended, the report written
   */
  record Took(double verdict, double report) {}

  /**
   * Each in the median.
   *
   * @param options of {@code check}
   */
  Took median(int runs, String... options) throws IOException {
    double[] verdict = new double[runs];
    double[] report = new double[runs];
    for (int i = 0; i < runs; i++) {
      Took took = once(options);
      verdict[i] = took.verdict;
      report[i] = took.report;
    }
    Arrays.sort(verdict);
    Arrays.sort(report);
    return new Took(verdict[runs / 2], report[runs / 2]);
  }

  private Took once(String... options) throws IOException {
    long from = System.nanoTime();
    Process process = start(options);
    try (BufferedReader said = process.inputReader(StandardCharsets.UTF_8)) {
      String verdict = said.readLine();
      double first = (System.nanoTime() - from) * 1e-9;
      said.lines().forEach(line -> {});
      int code = end(process);
      if (verdict == null || code != ExitCode.OK) {
        throw new IOException("check on the standard case ended with code " + code);
      }
      return new Took(first, (System.nanoTime() - from) * 1e-9);
    }
  }

  private Process start(String... options) throws IOException {
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    List<String> command = new ArrayList<>(List.of(java.toString()));
    command.addAll(ManagementFactory.getRuntimeMXBean().getInputArguments());
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.addAll(List.of(Main.class.getName(), "check", "--quiet", file.toString()));
    command.addAll(List.of(options));
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

  /** Removes all that was written. */
  void clear() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(p);
      }
    }
  }
}
