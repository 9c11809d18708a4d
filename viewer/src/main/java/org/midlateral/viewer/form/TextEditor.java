package org.midlateral.viewer.form;

import java.awt.event.ActionEvent;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.key.InputKey;

/** A field to type in; the arrow keys step a number up and down. */
final class TextEditor implements Editor {
  private static final int LARGE = 10;
  private static final String PLACEHOLDER = "JTextField.placeholderText";

  private final JTextField field = new JTextField(6);
  private final InputKey key;
  private LengthUnit unit = LengthUnit.MM;
  private boolean showing;

  TextEditor(InputKey key, Consumer<String> onEdit) {
    this.key = key;
    // Whoever comes to a field writes anew; a click places the caret.
    field.putClientProperty("JTextField.selectAllOnFocusPolicy", "always");
    field
        .getDocument()
        .addDocumentListener(
            new DocumentListener() {
              @Override
              public void insertUpdate(DocumentEvent e) {
                edited();
              }

              @Override
              public void removeUpdate(DocumentEvent e) {
                edited();
              }

              @Override
              public void changedUpdate(DocumentEvent e) {
                edited();
              }

              private void edited() {
                if (!showing) {
                  onEdit.accept(plain(field.getText()));
                }
              }
            });
    if (key.kind().isNumeric()) {
      field.setHorizontalAlignment(JTextField.TRAILING);
      step("UP", 1, onEdit);
      step("DOWN", -1, onEdit);
      step("shift UP", LARGE, onEdit);
      step("shift DOWN", -LARGE, onEdit);
    }
  }

  /** A number as files have it, with a point, where the locale's user types a comma. */
  private String plain(String text) {
    boolean comma =
        DecimalFormatSymbols.getInstance(Locale.getDefault()).getDecimalSeparator() == ',';
    return comma && key.kind().isNumeric() ? text.replaceAll("(\\d),(\\d)", "$1.$2") : text;
  }

  private void step(String stroke, int steps, Consumer<String> onEdit) {
    field.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(stroke), stroke);
    field
        .getActionMap()
        .put(
            stroke,
            new AbstractAction() {
              private static final long serialVersionUID = 1;

              @Override
              public void actionPerformed(ActionEvent e) {
                String text = field.getText().isBlank() ? start() : plain(field.getText());
                String next = NumberStep.by(text, key, unit, steps);
                // A new text takes the old one out first, which must not be told.
                showing = true;
                field.setText(next);
                showing = false;
                onEdit.accept(next);
              }
            });
  }

  /** Where stepping begins in an empty field. */
  private String start() {
    if (key.standard().isPresent()) {
      return Wording.shownDefault(key, unit);
    }
    return key.usual()
        .or(key::refused)
        .map(range -> Wording.number((range.low() + range.high()) / 2 / scale()))
        .orElse("");
  }

  private double scale() {
    return key.kind() == org.midlateral.measurement.key.ValueKind.LENGTH ? unit.millimetres() : 1;
  }

  @Override
  public JComponent component() {
    return field;
  }

  @Override
  public void show(String text, LengthUnit other) {
    unit = other;
    String placeholder = Wording.shownDefault(key, unit);
    if (!placeholder.equals(field.getClientProperty(PLACEHOLDER))) {
      field.putClientProperty(PLACEHOLDER, placeholder);
      field.repaint();
    }
    if (!plain(field.getText()).strip().equals(text)) {
      showing = true;
      field.setText(text);
      field.setCaretPosition(text.length());
      showing = false;
    }
  }
}
