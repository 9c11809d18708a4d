package org.midlateral.viewer.form;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.viewer.draft.Draft;

/**
 * The list of further rises of the relief: rows for each, and buttons to add one and take one out.
 */
final class BubbleRows {
  private static final String LIST = "relief.bubbles";

  private final BiFunction<InputKey, String, Row> addRow;
  private final Consumer<String> removeRow;
  private final Consumer<ListChange> onChange;
  private final JPanel items = new JPanel();
  private final List<String> paths = new ArrayList<>();
  private int shown;

  /**
   * Rows for no rise yet.
   *
   * @param group they stand in
   * @param addRow makes the row of a key at a path and keeps it
   * @param removeRow forgets the row at a path
   * @param onChange gets what to do with the list
   */
  BubbleRows(
      Group group,
      BiFunction<InputKey, String, Row> addRow,
      Consumer<String> removeRow,
      Consumer<ListChange> onChange) {
    this.addRow = addRow;
    this.removeRow = removeRow;
    this.onChange = onChange;
    items.setLayout(new BoxLayout(items, BoxLayout.Y_AXIS));
    items.setOpaque(false);
    JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 4));
    buttons.setOpaque(false);
    JButton add = new JButton("Add a rise");
    add.setName(LIST + ".add");
    add.setToolTipText(KeyTable.standard().find(LIST).orElseThrow().comment());
    add.addActionListener(e -> onChange.accept(new ListChange(LIST, -1)));
    buttons.add(add);
    group.addOther(items);
    group.addOther(buttons);
  }

  /** Brings the number of rows to that of a draft. */
  void show(Draft draft) {
    int wanted = draft.items(LIST);
    if (wanted == shown) {
      return;
    }
    paths.forEach(removeRow);
    paths.clear();
    items.removeAll();
    for (int i = 0; i < wanted; i++) {
      items.add(item(i));
    }
    shown = wanted;
    items.revalidate();
    items.repaint();
  }

  private JPanel item(int number) {
    JPanel panel = new JPanel();
    panel.setOpaque(false);
    panel.setLayout(new BoxLayout(panel, BoxLayout.Y_AXIS));
    panel.setBorder(BorderFactory.createEmptyBorder(6, 0, 0, 0));
    JPanel head = new JPanel(new BorderLayout());
    head.setOpaque(false);
    head.add(new JLabel("Rise " + (number + 1)), BorderLayout.WEST);
    JButton remove = new JButton("Take out");
    remove.setName(LIST + "[" + number + "].remove");
    remove.getAccessibleContext().setAccessibleName("Take out rise " + (number + 1));
    remove.addActionListener(e -> onChange.accept(new ListChange(LIST, number)));
    head.add(remove, BorderLayout.EAST);
    panel.add(head);
    for (InputKey key : KeyTable.standard().keys()) {
      if (key.isOfItem()) {
        String path = key.path().replace("[]", "[" + number + "]");
        paths.add(path);
        panel.add(addRow.apply(key, path));
      }
    }
    return panel;
  }
}
