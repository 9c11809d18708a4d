package org.midlateral.viewer.form;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.UIManager;
import org.midlateral.measurement.Digit;
import org.midlateral.measurement.Finding.Severity;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.ValueKind;

/** One key: its name, field, unit and usual range, marked where there is something to be said. */
final class Row extends JPanel {
  private static final long serialVersionUID = 1;
  private static final int NAME_WIDTH = 136;
  private static final int FIELD_WIDTH = 78;
  private static final int UNIT_WIDTH = 36;
  private static final int USUAL_WIDTH = 78;

  private final String path;

  /**
   * Something to be said at a field.
   *
   * @param severity how bad
   * @param text what
   */
  record Message(Severity severity, String text) {}

  private final transient InputKey key;
  private final transient Editor editor;
  private final JLabel unitLabel = new JLabel();
  private final JLabel usual = new JLabel();
  private transient List<Message> messages = List.of();
  private String usualRange = "";

  /**
   * The row of a key.
   *
   * @param path where it stands, items numbered
   * @param onEdit gets path and text
   * @param onFocus gets the row when its field is entered, null when it is left
   */
  Row(InputKey key, String path, BiConsumer<String, String> onEdit, Consumer<Row> onFocus) {
    super(new GridBagLayout());
    this.key = key;
    Consumer<String> edit = text -> onEdit.accept(path, text);
    boolean words = key.kind() == ValueKind.CHOICE || key.kind() == ValueKind.YES_NO;
    editor = words ? new ChoiceEditor(key, edit) : new TextEditor(key, edit);
    setOpaque(false);
    JLabel name = new JLabel(Wording.label(key));
    name.setToolTipText(key.comment());
    name.setLabelFor(editor.component());
    JComponent field = editor.component();
    this.path = path;
    field.setName(path);
    field.getAccessibleContext().setAccessibleName(Wording.whole(key));
    field.getAccessibleContext().setAccessibleDescription(key.comment());
    field.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent e) {
            scrollRectToVisible(new Rectangle(getSize()));
            onFocus.accept(Row.this);
          }

          @Override
          public void focusLost(FocusEvent e) {
            onFocus.accept(null);
          }
        });
    boolean wide = words || key.kind() == ValueKind.TEXT;
    arrange(name, field, wide);
    show("", LengthUnit.MM, Optional.empty());
  }

  private void arrange(JLabel name, JComponent field, boolean wide) {
    GridBagConstraints at = new GridBagConstraints();
    at.insets = new Insets(2, 0, 2, 6);
    at.anchor = GridBagConstraints.BASELINE_LEADING;
    at.fill = GridBagConstraints.HORIZONTAL;
    fix(name, NAME_WIDTH);
    add(name, at);
    if (wide) {
      at.gridwidth = 3;
      at.weightx = 1;
      add(field, at);
      at.gridwidth = 1;
    } else {
      fix(field, FIELD_WIDTH);
      add(field, at);
      fix(unitLabel, UNIT_WIDTH);
      add(unitLabel, at);
      at.weightx = 1;
      fix(usual, USUAL_WIDTH);
      usual.setForeground(UIManager.getColor("Label.disabledForeground"));
      add(usual, at);
    }
  }

  private static void fix(JComponent component, int width) {
    int height =
        Math.max(new JLabel("x").getPreferredSize().height, component.getPreferredSize().height);
    Dimension size = new Dimension(width, height);
    component.setPreferredSize(size);
    component.setMinimumSize(size);
  }

  JComponent field() {
    return editor.component();
  }

  InputKey key() {
    return key;
  }

  void show(String text, LengthUnit unit, Optional<Digit> digit) {
    editor.show(text, unit);
    unitLabel.setText(Wording.unit(key, unit));
    usualRange = key.of(digit).usual().map(range -> Wording.usual(range, key, unit)).orElse("");
    label();
  }

  /**
   * Marks the field by colour and a word. What is to be said is as long as it is, and stands where
   * it moves no row: at the form's foot, and under the pointer.
   */
  void showMessages(List<Message> all, Color caution, Color refusal) {
    messages = List.copyOf(all);
    boolean refused = isRefused();
    editor.outline(messages.isEmpty() ? null : refused ? "error" : "warning");
    usual.setForeground(
        messages.isEmpty()
            ? UIManager.getColor("Label.disabledForeground")
            : colour(caution, refusal));
    field().setToolTipText(messages.isEmpty() ? key.comment() : text());
    label();
  }

  private boolean isRefused() {
    return messages.stream().anyMatch(m -> m.severity() == Severity.REFUSAL);
  }

  private void label() {
    String word = isRefused() ? "refused" : "caution";
    usual.setText(messages.isEmpty() ? usualRange : word);
    usual.setToolTipText(messages.isEmpty() ? usualRange.isEmpty() ? null : "usual range" : text());
  }

  /** Where its key stands, items numbered. */
  String path() {
    return path;
  }

  /** What is to be said about the value, the worst first; empty for nothing. */
  String text() {
    return String.join("\n", messages.stream().map(Message::text).toList());
  }

  /** The colour of what is said. */
  Color colour(Color caution, Color refusal) {
    return isRefused() ? refusal : caution;
  }
}
