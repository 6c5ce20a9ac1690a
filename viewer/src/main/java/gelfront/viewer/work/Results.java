// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.result.StoredRun;
import gelfront.setup.LoadedCase;
import org.jspecify.annotations.Nullable;

/**
 * What is there to be seen.
 *
 * @param shown null: none
 * @param caseText that it was calculated from
 * @param other beside it; null: none
 */
record Results(@Nullable StoredRun shown, String caseText, @Nullable StoredRun other) {
  static final Results NONE = new Results(null, "", null);

  Results with(StoredRun run, String text) {
    return new Results(run, text, other);
  }

  /**
   * @param run null: nothing beside it
   */
  Results beside(@Nullable StoredRun run) {
    return new Results(shown, caseText, run);
  }

  /** Whether the case was changed since its result was calculated. */
  boolean stale(LoadedCase now) {
    return shown != null && !now.text().equals(caseText);
  }
}
