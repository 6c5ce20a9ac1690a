// SPDX-License-Identifier: Apache-2.0
package gelfront.base;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** Copies of records with a few components changed, for tests. */
public final class Changed {
  private Changed() {}

  /**
   * @param namesAndValues a component's name, its value, and so on
   * @throws IllegalArgumentException if the record has no such component, or it takes no such value
   */
  public static <R extends Record> R of(R record, Object... namesAndValues) {
    Map<String, Object> other = new HashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      other.put((String) namesAndValues[i], namesAndValues[i + 1]);
    }
    RecordComponent[] parts = record.getClass().getRecordComponents();
    Object[] values = new Object[parts.length];
    try {
      for (int i = 0; i < parts.length; i++) {
        Object was = accessible(parts[i]).invoke(record);
        values[i] = other.containsKey(parts[i].getName()) ? other.remove(parts[i].getName()) : was;
      }
      if (!other.isEmpty()) {
        throw new IllegalArgumentException(record.getClass() + " has no " + other.keySet());
      }
      return made(record, parts, values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalArgumentException(e);
    }
  }

  private static java.lang.reflect.Method accessible(RecordComponent part) {
    part.getAccessor().setAccessible(true);
    return part.getAccessor();
  }

  @SuppressWarnings("unchecked") // the constructor of a record's class makes that record
  private static <R extends Record> R made(R like, RecordComponent[] parts, Object[] values)
      throws ReflectiveOperationException {
    Class<?>[] types = Arrays.stream(parts).map(RecordComponent::getType).toArray(Class[]::new);
    Constructor<?> all = like.getClass().getDeclaredConstructor(types);
    all.setAccessible(true);
    return (R) all.newInstance(values);
  }
}
