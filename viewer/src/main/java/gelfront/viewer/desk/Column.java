// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import javax.swing.BoxLayout;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import org.jspecify.annotations.Nullable;

/** As wide as what it scrolls in, so that words wrap and nothing is hidden at the right. */
final class Column extends JPanel implements Scrollable {
  private static final long serialVersionUID = 1;
  private static final int LINE = 16;

  /**
   * @param layout null: one below the other
   */
  Column(@Nullable LayoutManager layout) {
    super(layout);
    if (layout == null) {
      setLayout(new BoxLayout(this, BoxLayout.Y_AXIS));
    }
  }

  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return getPreferredSize();
  }

  @Override
  public int getScrollableUnitIncrement(Rectangle r, int way, int direction) {
    return LINE;
  }

  @Override
  public int getScrollableBlockIncrement(Rectangle r, int way, int direction) {
    return r.height;
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return true;
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return false;
  }
}
