package gelfront.viewer;

import gelfront.finding.Findings;
import gelfront.finding.Severity;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Font;
import java.util.Locale;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JTextArea;

/** The verdict, and the times that matter at the mould. */
final class VerdictPane {
  private VerdictPane() {}

  static JPanel of(Findings f) {
    JPanel pane = new JPanel(new BorderLayout(0, 4));
    pane.setBorder(
        BorderFactory.createCompoundBorder(
            BorderFactory.createMatteBorder(0, 8, 0, 0, colour(f.severity())),
            BorderFactory.createEmptyBorder(10, 12, 10, 12)));
    JTextArea verdict = PocketList.text(f.verdict());
    verdict.setFont(verdict.getFont().deriveFont(Font.BOLD, verdict.getFont().getSize2D() + 4));
    pane.add(verdict, BorderLayout.NORTH);
    pane.add(PocketList.text(times(f)), BorderLayout.CENTER);
    return pane;
  }

  /** Beside the words, never instead of them. */
  private static Color colour(Severity s) {
    return switch (s) {
      case CLEAN -> new Color(0x2E8B57);
      case MAY_DENT -> new Color(0xE0A100);
      case WILL_DENT -> new Color(0xC0392B);
    };
  }

  static String times(Findings f) {
    return "All of the part has set "
        + after(f.partSets())
        + " · firm enough to open "
        + after(f.firmAt());
  }

  private static String after(double seconds) {
    return Double.isFinite(seconds)
        ? String.format(Locale.ROOT, seconds < 10 ? "after %.1f s" : "after %.0f s", seconds)
        : "not within this run";
  }
}
