// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.setup.Case;
import gelfront.setup.CaseException;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import gelfront.setup.Mistake;
import gelfront.setup.Numerics;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One run that is wanted.
 *
 * @param label for people: what is changed
 * @param loaded the case and the text it would have as a file
 */
public record Job(String label, LoadedCase loaded) {
  /**
   * A case with something stated otherwise.
   *
   * @throws IllegalArgumentException in words, if there can't be such a case
   */
  public static Job of(String label, LoadedCase base, List<Change> changes) {
    try {
      return new Job(label, changes.isEmpty() ? base : base.with(changes));
    } catch (CaseException e) {
      String why = e.mistakes().stream().map(Mistake::message).collect(Collectors.joining("; "));
      throw new IllegalArgumentException(label + ": " + why, e);
    }
  }

  /** To be calculated. */
  public Case setup() {
    return loaded.setup();
  }

  /** The same in quick's voxels and steps, whatever voxel the case states. */
  public Job quick() {
    return at(Numerics.Level.QUICK);
  }

  /** The same in normal's voxels and steps, whatever voxel the case states. */
  public Job normal() {
    return at(Numerics.Level.NORMAL);
  }

  private Job at(Numerics.Level level) {
    return new Job(label, loaded.with(setup().numerics().at(level)));
  }
}
