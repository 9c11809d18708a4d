package org.midlateral.viewer.form;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import org.midlateral.measurement.key.KeyTable;

/** A section of the form, which opens and closes. */
final class Group extends JPanel {
  private static final long serialVersionUID = 1;

  /** Keys of no section that need not be stated. */
  static final String SHEET = "note-and-paper";

  private final String title;
  private final JToggleButton header = new JToggleButton();
  private final JPanel body = new JPanel();
  private int count;
  private int set;

  Group(String section, boolean open) {
    super(new BorderLayout());
    title = Wording.sectionTitle(section);
    setOpaque(false);
    header.setName("group." + section);
    header.setHorizontalAlignment(SwingConstants.LEADING);
    // The arrow tells whether it is open; a chosen look would tell something else.
    header.putClientProperty(
        FlatClientProperties.STYLE,
        "font: bold; selectedBackground: $Panel.background; background: $Panel.background;"
            + " selectedForeground: $Label.foreground; borderWidth: 0");
    String comment = KeyTable.standard().sectionComment(section);
    header.setToolTipText(comment.isEmpty() ? null : comment);
    header.addActionListener(e -> setOpen(header.isSelected()));
    body.setLayout(new BoxLayout(body, BoxLayout.Y_AXIS));
    body.setBorder(BorderFactory.createEmptyBorder(0, 12, 8, 0));
    body.setOpaque(false);
    add(header, BorderLayout.NORTH);
    add(body, BorderLayout.CENTER);
    setOpen(open);
  }

  void add(Row row) {
    body.add(row);
  }

  /** A component among the rows that is no row. */
  void addOther(JPanel other) {
    body.add(other);
  }

  void setOpen(boolean open) {
    header.setSelected(open);
    body.setVisible(open);
    label();
    revalidate();
  }

  /** Number of messages inside, told on the header of a closed group. */
  void setCount(int messages) {
    count = messages;
    label();
  }

  /** Number of values inside that differ from their default, told likewise. */
  void setSet(int values) {
    set = values;
    label();
  }

  private void label() {
    String changed = set > 0 ? "  \u00b7 " + set + " set" : "";
    String found = count > 0 ? "  (" + count + " to look at)" : "";
    header.setText(header.isSelected() ? title : title + changed + found);
    String arrow = header.isSelected() ? "Tree.expandedIcon" : "Tree.collapsedIcon";
    header.setIcon(UIManager.getIcon(arrow));
  }
}
