package org.midlateral.viewer.form;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.midlateral.viewer.draft.Draft;

/** Keys of the file that the program does not know, each with a button to take it out. */
final class UnknownRows extends JPanel {
  private static final long serialVersionUID = 1;

  private final transient Consumer<String> onTakeOut;
  private transient List<String> shown = List.of();

  UnknownRows(Consumer<String> onTakeOut) {
    this.onTakeOut = onTakeOut;
    setLayout(new BoxLayout(this, BoxLayout.Y_AXIS));
    setOpaque(false);
    setVisible(false);
  }

  void show(Draft draft) {
    List<String> unknown = draft.unknown();
    if (unknown.equals(shown)) {
      return;
    }
    shown = unknown;
    removeAll();
    add(line(new JLabel("Not known to the program"), null));
    for (String path : unknown) {
      JButton out = new JButton("Take out");
      out.setName("unknown." + path);
      out.getAccessibleContext().setAccessibleName("Take out " + path);
      out.addActionListener(e -> onTakeOut.accept(path));
      JLabel label = new JLabel(path);
      label.setToolTipText(path);
      add(line(label, out));
    }
    setVisible(!unknown.isEmpty());
    revalidate();
    repaint();
  }

  private static JPanel line(JLabel label, JButton button) {
    JPanel line = new JPanel(new BorderLayout(8, 0));
    line.setOpaque(false);
    line.setBorder(BorderFactory.createEmptyBorder(2, 12, 2, 8));
    label.setMinimumSize(new Dimension(10, label.getPreferredSize().height));
    line.add(label, BorderLayout.CENTER);
    if (button != null) {
      line.add(button, BorderLayout.EAST);
    }
    return line;
  }
}
