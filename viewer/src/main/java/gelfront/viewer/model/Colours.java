// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.finding.Severity;
import gelfront.report.ColourRamp;
import gelfront.result.DentColour;

/** Colours of the picture, 0xRRGGBB. Never the only way in which something is told. */
public final class Colours {
  /** Still liquid at the time that is looked at. */
  public static final int LIQUID = 0xF2743A;

  /** Stripes on liquid that has been cut off. */
  public static final int SHUT = 0x4A1030;

  /** What the shot hasn't come to. */
  public static final int AIR = 0xDCE6F0;

  /** The part before anything is known of it. */
  public static final int PART = 0xC9CDC4;

  /** Gate, runner and sprue. */
  public static final int FEED = 0xD9B36A;

  public static final int GATE = 0xF2743A;
  public static final int BLOCK = 0xB9C4CC;

  /** Channels for a coolant. */
  public static final int COOLANT = 0x4FA3E0;

  public static final int OPEN_EDGE = 0xE0342B;
  public static final int FLIPPED = 0xF4D03A;
  public static final int MARK = 0xFFFFFF;

  /** Bodies of pockets, by number; all lighter than glass and apart for colour-blind eyes. */
  private static final int[] POCKETS = {0xF2743A, 0xF3C55A, 0x7FC4A0, 0xD98CB3, 0x9DB8E8};

  /** Times the visible depth at the end of the dents' colours. */
  public static final double DEEPEST = 4;

  private Colours() {}

  public static int pocket(int number) {
    return POCKETS[Math.floorMod(number - 1, POCKETS.length)];
  }

  /** Early to late. */
  public static int[] times() {
    return ColourRamp.STANDARD.table();
  }

  /** From smooth to {@link #DEEPEST} times the depth that is seen. */
  public static int[] dents() {
    int[] out = new int[256];
    for (int i = 0; i < out.length; i++) {
      out[i] = DentColour.of(DEEPEST * i / 255, 1);
    }
    return out;
  }

  /** Beside words that tell neither well nor bad. */
  public static final int UNJUDGED = 0x8A939B;

  /** Beside the words, never instead of them. */
  public static int of(Severity s) {
    return switch (s) {
      case CLEAN -> 0x2F9E6E;
      case MAY_DENT -> 0xE0A100;
      case WILL_DENT -> 0xC4402F;
    };
  }
}
