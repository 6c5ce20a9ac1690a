// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import java.util.List;

/** Five steps for somebody who has never seen the window. */
public final class Tour {
  /**
   * @param words what to do and why
   * @param points name of the component that it is about
   */
  public record Step(String words, String points) {}

  /** In their order. */
  public static final List<Step> STEPS =
      List.of(
          new Step(
              "This is the example: two bulbs with a thin neck. Your own part comes in by Open, or"
                  + " drop its file on the window.",
              "do open"),
          new Step(
              "Click on the part to put the gate there; drag it to move it, its rim to size it. The"
                  + " quick verdict stands beside it.",
              "picture"),
          new Step(
              "Everything about mould and shot is in this form. Rest the mouse on a line to read what"
                  + " it means and what is usual.",
              "gate.size"),
          new Step(
              "Check calculates it for good and shows the freezing as it goes. Stop works at once.",
              "do check"),
          new Step(
              "Then look inside: slide the time, move the cut, see which pockets were cut off, and ask"
                  + " under What helps what to change.",
              "tabs"));

  private Tour() {}
}
