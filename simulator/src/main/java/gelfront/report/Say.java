// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.base.Quantities;
import gelfront.finding.Constriction;
import gelfront.finding.Dent;
import gelfront.finding.Findings;
import gelfront.finding.Severity;
import gelfront.mesh.Vec3;
import java.util.Locale;

/** Figures for people: as many digits as mean something, and a unit. From SI. */
final class Say {
  private static final double MM = 1e3;
  private static final double INCH = 1 / 0.0254;

  private Say() {}

  /** A dent's depth range, millimetres. */
  static String depth(double low, double high) {
    String a = fixed(low * MM, 2);
    String b = fixed(high * MM, 2);
    return a.equals(b) ? b + " mm" : a + " to " + b + " mm";
  }

  static String depth(Dent d) {
    return depth(d.depthLow(), d.depthHigh());
  }

  /** The same in inches. */
  static String depthInch(double low, double high) {
    String a = fixed(low * INCH, 3);
    String b = fixed(high * INCH, 3);
    return a.equals(b) ? b + " in" : a + " to " + b + " in";
  }

  /** A length, one decimal of a millimetre. */
  static String mm(double metres) {
    return fixed(metres * MM, 1) + " mm";
  }

  /** A place, millimetres. */
  static String place(Vec3 p) {
    return fixed(p.x() * MM, 1) + ", " + fixed(p.y() * MM, 1) + ", " + fixed(p.z() * MM, 1);
  }

  /** Seconds as a person says them; "never" for infinity. */
  static String time(double s) {
    if (!Double.isFinite(s)) {
      return "not during this run";
    }
    if (s < 9.95) {
      return fixed(s, 1) + " s";
    }
    long whole = Math.round(s);
    if (whole < 120) {
      return whole + " s";
    }
    return whole / 60 + " min" + (whole % 60 == 0 ? "" : " " + whole % 60 + " s");
  }

  static String ml(double m3) {
    return significant(m3 * 1e6, 2) + " ml";
  }

  static String grams(double kg) {
    return significant(kg * 1e3, 2) + " g";
  }

  static String severity(Severity s) {
    return switch (s) {
      case CLEAN -> "comes out clean";
      case MAY_DENT -> "may dent";
      case WILL_DENT -> "will dent";
    };
  }

  /** What becomes of the part, in two words or three. */
  static String outcome(Findings f) {
    return f.empty() > 0 ? "doesn't fill" : severity(f.severity());
  }

  /** Class of the page's style for it. */
  static String tone(Severity s) {
    return switch (s) {
      case CLEAN -> "clean";
      case MAY_DENT -> "may";
      case WILL_DENT -> "will";
    };
  }

  static String culprit(Constriction.Kind k) {
    return switch (k) {
      case GATE -> "gate";
      case RUNNER -> "runner";
      case SPRUE -> "sprue";
      case DRY_SPRUE -> "sprue ran dry";
      case NECK -> "neck";
      case TOO_THICK -> "the part, too thick";
    };
  }

  /** 0xRRGGBB as #rrggbb. */
  static String hex(int rgb) {
    return String.format(Locale.ROOT, "#%06x", rgb);
  }

  static String fixed(double v, int decimals) {
    return Quantities.say("%." + decimals + "f", v);
  }

  /** At least so many digits that differ from leading zeros, never an exponent. */
  static String significant(double v, int digits) {
    if (v == 0 || !Double.isFinite(v)) {
      return fixed(v, 0);
    }
    int before = (int) Math.floor(Math.log10(Math.abs(v))) + 1;
    return fixed(v, Math.max(0, digits - before));
  }

  /** The shortest of some decimals for an axis with this step. */
  static String tick(double v, double step) {
    return fixed(v, Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9)));
  }
}
