package org.midlateral.viewer.form;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.viewer.draft.Draft;

/** The list of further relief bubbles: rows for each, and buttons to add one and take one out. */
final class Bubbles {
  private static final String LIST = "relief.bubbles";

  private final Form form;
  private final Consumer<Form.Items> onItems;
  private final JPanel items = new JPanel();
  private final List<String> paths = new ArrayList<>();
  private int shown;

  Bubbles(Form form, Group group, Consumer<Form.Items> onItems) {
    this.form = form;
    this.onItems = onItems;
    items.setLayout(new BoxLayout(items, BoxLayout.Y_AXIS));
    items.setOpaque(false);
    JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 4));
    buttons.setOpaque(false);
    JButton add = new JButton("Add a bubble");
    add.setName(LIST + ".add");
    add.setToolTipText(KeyTable.standard().find(LIST).orElseThrow().comment());
    add.addActionListener(e -> onItems.accept(new Form.Items(LIST, -1)));
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
    paths.forEach(form::forget);
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
    head.add(new JLabel("Bubble " + (number + 1)), BorderLayout.WEST);
    JButton remove = new JButton("Take out");
    remove.setName(LIST + "[" + number + "].remove");
    remove.getAccessibleContext().setAccessibleName("Take out bubble " + (number + 1));
    remove.addActionListener(e -> onItems.accept(new Form.Items(LIST, number)));
    head.add(remove, BorderLayout.EAST);
    panel.add(head);
    for (InputKey key : KeyTable.standard().keys()) {
      if (key.isOfItem()) {
        String path = key.path().replace("[]", "[" + number + "]");
        paths.add(path);
        panel.add(form.register(key, path));
      }
    }
    return panel;
  }
}
