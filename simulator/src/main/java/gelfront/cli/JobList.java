// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import gelfront.setup.CaseFile;
import gelfront.setup.LoadedCase;
import gelfront.study.Job;
import gelfront.study.MapStudy;
import gelfront.study.Range;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A map whose runs others start: {@code jobs.json} in the study's folder. Every machine that runs
 * one of them sees folder and case under the same path.
 *
 * @param caseFile absolute path
 * @param text of the case when the jobs were listed
 * @param x as it was asked for
 * @param y as it was asked for
 * @param steps of a range that states none
 * @param level in a word
 * @param flow whether liquid is drawn in and carries heat
 */
record JobList(
    String caseFile, String text, String x, String y, int steps, String level, boolean flow) {
  static final String FILE = "jobs.json";

  /**
   * @throws InputFailure if it isn't there, damaged, or the case is another by now
   */
  static JobList read(Path folder) {
    Path file = folder.resolve(FILE);
    JobList jobs;
    try {
      jobs = new ObjectMapper().readValue(Files.readAllBytes(file), JobList.class);
    } catch (JsonProcessingException e) {
      throw new InputFailure(file + ": damaged: list the jobs again, with study jobs", e);
    } catch (IOException e) {
      throw new InputFailure(folder + ": no jobs are listed there; study jobs lists them", e);
    }
    LoadedCase now = CaseFile.read(Path.of(jobs.caseFile()));
    if (!now.text().equals(jobs.text())) {
      throw new InputFailure(
          jobs.caseFile() + ": has changed since the jobs were listed: list them again");
    }
    return jobs;
  }

  String json() {
    try {
      return new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT).writeValueAsString(this);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * @throws InputFailure in words
   */
  MapStudy study() {
    try {
      return new MapStudy(Range.parse(x, steps), Range.parse(y, steps), StudyOptions.level(level));
    } catch (IllegalArgumentException e) {
      throw new InputFailure(String.valueOf(e.getMessage()), e);
    }
  }

  /**
   * @throws InputFailure in words, if a value can't be had
   */
  List<Job> jobs(LoadedCase base) {
    try {
      return study().jobs(base);
    } catch (IllegalArgumentException e) {
      throw new InputFailure(String.valueOf(e.getMessage()), e);
    }
  }
}
