package org.midlateral.viewer.form;

import com.formdev.flatlaf.FlatClientProperties;
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
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;
import org.midlateral.measurement.Digit;
import org.midlateral.measurement.Finding.Severity;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.ValueKind;

/** One key: its name, field, unit and usual range, and below them what is to be said about it. */
final class Row extends JPanel {
  private static final long serialVersionUID = 1;
  private static final int NAME_WIDTH = 136;
  private static final int FIELD_WIDTH = 78;
  private static final int UNIT_WIDTH = 36;
  private static final int USUAL_WIDTH = 78;

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
  private final JTextArea message = new JTextArea();

  /**
   * The row of a key.
   *
   * @param path where it stands, items numbered
   * @param onEdit gets path and text
   * @param onFocus gets the key when its field is entered, null when it is left
   */
  Row(InputKey key, String path, BiConsumer<String, String> onEdit, Consumer<InputKey> onFocus) {
    super(new GridBagLayout());
    this.key = key;
    Consumer<String> edit = text -> onEdit.accept(path, text);
    boolean words = key.kind() == ValueKind.CHOICE || key.kind() == ValueKind.YES_NO;
    editor = words ? new ChoiceEditor(key, edit) : new TextEditor(key, edit);
    setOpaque(false);
    JLabel name = new JLabel(Wording.title(key.name()));
    name.setToolTipText(key.comment());
    name.setLabelFor(editor.component());
    JComponent field = editor.component();
    field.setName(path);
    field.getAccessibleContext().setAccessibleName(title());
    field.getAccessibleContext().setAccessibleDescription(key.comment());
    field.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent e) {
            scrollRectToVisible(new Rectangle(getSize()));
            onFocus.accept(key);
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

  private String title() {
    return key.section().isEmpty()
        ? Wording.title(key.name())
        : Wording.sectionTitle(key.section()) + ", " + Wording.title(key.name());
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
      usual.putClientProperty(FlatClientProperties.STYLE, "foreground: $Label.disabledForeground");
      add(usual, at);
    }
    message.setEditable(false);
    // A text that changes elsewhere must not pull the form toward it.
    ((DefaultCaret) message.getCaret()).setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
    message.setFocusable(false);
    message.setLineWrap(true);
    message.setWrapStyleWord(true);
    message.setOpaque(false);
    message.setBorder(null);
    message.setVisible(false);
    at.gridx = 0;
    at.gridy = 1;
    at.gridwidth = 4;
    at.insets = new Insets(0, 0, 6, 4);
    add(message, at);
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
    usual.setText(key.of(digit).usual().map(range -> Wording.usual(range, key, unit)).orElse(""));
    usual.setToolTipText(usual.getText().isEmpty() ? null : "usual range");
  }

  /** Shows messages about the value; the worst first. */
  void showMessages(List<Message> messages, Color caution, Color refusal) {
    message.setVisible(!messages.isEmpty());
    if (messages.isEmpty()) {
      editor.outline(null);
      message.setText("");
      return;
    }
    boolean refused = messages.stream().anyMatch(m -> m.severity() == Severity.REFUSAL);
    editor.outline(refused ? "error" : "warning");
    message.setForeground(refused ? refusal : caution);
    message.setText(String.join("\n", messages.stream().map(Message::text).toList()));
  }
}
