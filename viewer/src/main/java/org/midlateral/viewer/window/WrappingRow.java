package org.midlateral.viewer.window;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Insets;
import javax.swing.JPanel;

/** Controls in a row that goes on in a further one where there is no room. */
final class WrappingRow extends JPanel {
  private static final long serialVersionUID = 1;
  private static final int GAP = 6;

  WrappingRow() {
    super(new FlowLayout(FlowLayout.LEADING, GAP, 3));
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(0, getPreferredSize().height);
  }

  /** As high as its rows are at the width that it has. */
  @Override
  public Dimension getPreferredSize() {
    FlowLayout flow = (FlowLayout) getLayout();
    Insets insets = getInsets();
    int room = getParent() == null ? 0 : getParent().getWidth() - insets.left - insets.right;
    if (room <= 0) {
      return super.getPreferredSize();
    }
    int x = flow.getHgap();
    int tall = 0;
    int height = insets.top + insets.bottom + flow.getVgap();
    for (Component each : getComponents()) {
      Dimension size = each.getPreferredSize();
      if (x > flow.getHgap() && x + size.width + flow.getHgap() > room) {
        height += tall + flow.getVgap();
        x = flow.getHgap();
        tall = 0;
      }
      x += size.width + flow.getHgap();
      tall = Math.max(tall, size.height);
    }
    return new Dimension(room, height + tall + flow.getVgap());
  }

  @Override
  public void setBounds(int x, int y, int width, int height) {
    boolean wider = width != getWidth();
    super.setBounds(x, y, width, height);
    if (wider) {
      revalidate();
    }
  }
}
