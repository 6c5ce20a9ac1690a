// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Ran;
import gelfront.answer.RunStore;
import java.util.Optional;
import java.util.function.Function;

/**
 * Runs of a study in which nothing is calculated.
 *
 * @param of what came of a run, by its hash
 */
record ToldRuns(Function<String, Ran> of) implements RunStore {
  @Override
  public Optional<Ran> find(String hash) {
    return Optional.of(of.apply(hash));
  }

  @Override
  public void keep(String hash, String label, Ran ran) {
    throw new AssertionError("calculated: " + label);
  }
}
