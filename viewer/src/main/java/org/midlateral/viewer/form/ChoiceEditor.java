package org.midlateral.viewer.form;

import java.awt.Component;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.ValueKind;

/** One of some words; what is chosen by default is taken out of the file again. */
final class ChoiceEditor implements Editor {
  private final JComboBox<String> box;
  private final InputKey key;
  private boolean showing;

  ChoiceEditor(InputKey key, Consumer<String> onEdit) {
    this.key = key;
    List<String> choices = key.kind() == ValueKind.YES_NO ? List.of("yes", "no") : key.choices();
    box = new JComboBox<>(choices.toArray(String[]::new));
    box.setRenderer(new Titles());
    box.addActionListener(
        e -> {
          if (!showing && box.getSelectedItem() != null) {
            String chosen = box.getSelectedItem().toString();
            onEdit.accept(chosen.equals(key.standard().orElse(null)) ? "" : chosen);
          }
        });
  }

  @Override
  public JComponent component() {
    return box;
  }

  @Override
  public void show(String text, LengthUnit unit) {
    showing = true;
    String plain =
        switch (text) {
          case "true" -> "yes";
          case "false" -> "no";
          default -> text;
        };
    box.setSelectedItem(plain.isEmpty() ? key.standard().orElse(null) : plain);
    if (!plain.isEmpty() && !plain.equals(box.getSelectedItem())) {
      box.setSelectedItem(null);
    }
    showing = false;
  }

  private final class Titles extends DefaultListCellRenderer {
    private static final long serialVersionUID = 1;

    @Override
    public Component getListCellRendererComponent(
        JList<?> list, Object value, int index, boolean selected, boolean focused) {
      String text = value == null ? "choose" : Wording.choice(key, value.toString());
      return super.getListCellRendererComponent(list, text, index, selected, focused);
    }
  }
}
