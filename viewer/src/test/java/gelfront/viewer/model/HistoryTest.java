// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class HistoryTest {
  @Test
  void stepsAreUndoneAndDoneAgain() {
    History<String> h = new History<>("a");
    h.add("b");
    h.add("c");

    assertEquals("b", h.undo());
    assertEquals("a", h.undo());
    assertFalse(h.canUndo());
    assertEquals("a", h.undo());
    assertEquals("b", h.redo());
    assertTrue(h.canRedo());
  }

  @Test
  void aNewStepForgetsWhatWasUndone() {
    History<String> h = new History<>("a");
    h.add("b");
    h.undo();
    h.add("c");

    assertFalse(h.canRedo());
    assertEquals("a", h.undo());
  }

  @Test
  void theSameAgainIsNoStepAndADragIsOne() {
    History<String> h = new History<>("a");
    h.add("a");
    assertFalse(h.canUndo());
    h.add("b");
    h.replace("b2");
    h.replace("b3");

    assertEquals("b3", h.now());
    assertEquals("a", h.undo());
  }
}
