// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Where outcomes are kept, by the hash of all that went in. For any thread. */
public interface RunStore {
  /**
   * @param hash of the run's inputs, hexadecimal digits
   */
  Optional<Ran> find(String hash);

  /** Keeps it for good before it returns. */
  void keep(String hash, String label, Ran ran);

  /** Keeps nothing longer than the program runs. */
  static RunStore inMemory() {
    Map<String, Ran> kept = new ConcurrentHashMap<>();
    return new RunStore() {
      @Override
      public Optional<Ran> find(String hash) {
        return Optional.ofNullable(kept.get(hash));
      }

      @Override
      public void keep(String hash, String label, Ran ran) {
        kept.put(hash, ran);
      }
    };
  }
}
