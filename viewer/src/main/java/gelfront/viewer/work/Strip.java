// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

/** What is said to the user last, in plain words. */
final class Strip {
  private final Runnable told;
  private String words = "";
  private boolean bad;

  /**
   * @param told when there is something else to be read
   */
  Strip(Runnable told) {
    this.told = told;
  }

  /**
   * @param wrong whether something went wrong
   */
  void say(String what, boolean wrong) {
    words = what;
    bad = wrong;
    told.run();
  }

  String words() {
    return words;
  }

  boolean bad() {
    return bad;
  }
}
