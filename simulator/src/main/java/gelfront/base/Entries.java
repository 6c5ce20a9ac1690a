// SPDX-License-Identifier: Apache-2.0
package gelfront.base;

import java.util.Map;

/** Maps that must have what is asked of them. */
public final class Entries {
  private Entries() {}

  /**
   * A map's value for a key.
   *
   * @throws IllegalStateException that names the key, if there is none: a fault in the program
   */
  public static <K, V> V of(Map<K, V> map, K key) {
    V value = map.get(key);
    if (value == null) {
      throw new IllegalStateException("nothing is known of " + key);
    }
    return value;
  }
}
