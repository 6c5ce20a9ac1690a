// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.util.Map;
import javax.swing.JPopupMenu;
import javax.swing.ToolTipManager;

/** Light or dark, in the project's own colours: bottle green on paper, brass for what matters. */
public final class Theme {
  private Theme() {}

  /** Before the first window, and whenever the user changes it. */
  public static void set(boolean dark) {
    FlatLaf.setGlobalExtraDefaults(
        dark
            ? Map.of("@accentColor", "#C9933A", "@background", "#20282B")
            : Map.of("@accentColor", "#1E6A63", "@background", "#F1EFE8"));
    if (dark) {
      FlatDarkLaf.setup();
    } else {
      FlatLightLaf.setup();
    }
    FlatLaf.updateUI();
    // Light menus and tips would lie behind the picture.
    JPopupMenu.setDefaultLightWeightPopupEnabled(false);
    ToolTipManager.sharedInstance().setLightWeightPopupEnabled(false);
  }
}
