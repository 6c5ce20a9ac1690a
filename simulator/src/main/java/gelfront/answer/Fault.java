// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

/** What is wrong with a part. */
public enum Fault {
  DENT("a dent"),
  TRAPPED_AIR("trapped air"),
  SHORT_SHOT("a short shot"),
  OTHER("something else");

  private final String words;

  Fault(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
