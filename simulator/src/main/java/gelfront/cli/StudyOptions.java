// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.base.Entries;
import gelfront.study.Job;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** What all commands that run studies know. */
final class StudyOptions {
  private static final Map<String, UnaryOperator<Job>> LEVELS =
      Map.of("quick", Job::quick, "normal", Job::normal, "case", UnaryOperator.identity());

  @Spec(Target.MIXEE)
  private CommandSpec command;

  private String level = "quick";

  @Mixin private StudyPlace place;

  @Option(
      names = "--no-flow",
      description = "Leaves out that liquid is drawn in and carries heat: conduction alone.")
  private boolean noFlow;

  @Option(
      names = "--level",
      paramLabel = "LEVEL",
      description = "quick, normal, or case for the case's own; left out: quick.")
  void set(String word) {
    if (!LEVELS.containsKey(word)) {
      throw new ParameterException(
          command.commandLine(), "--level " + word + ": quick, normal or case");
    }
    level = word;
  }

  @Nullable Path folder() {
    return place.folder();
  }

  boolean flow() {
    return !noFlow;
  }

  UnaryOperator<Job> level() {
    return Entries.of(LEVELS, level);
  }

  /** As it was asked for. */
  String levelWord() {
    return level;
  }

  /**
   * @throws IllegalArgumentException if it is no level's word
   */
  static UnaryOperator<Job> level(String word) {
    if (!LEVELS.containsKey(word)) {
      throw new IllegalArgumentException("no level " + word);
    }
    return LEVELS.get(word);
  }
}
