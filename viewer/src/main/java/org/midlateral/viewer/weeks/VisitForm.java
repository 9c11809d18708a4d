package org.midlateral.viewer.weeks;

import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.course.Course;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;

/** Fields for one visit; what is left empty was not read. */
final class VisitForm extends JPanel {
  private static final long serialVersionUID = 1;

  /** The readings of every visit, in the order in which they are taken. */
  private static final List<String> KEYS =
      List.of(
          "time",
          "pip-extension-deficit.passive",
          "pip-extension-deficit.active",
          "pip-flexion.passive",
          "pip-flexion.active",
          "dip-flexion.active",
          "hours-worn",
          "skin",
          "fingertip",
          "soreness",
          "sore-at",
          "piece",
          "note");

  private final transient Map<String, JComponent> fields = new LinkedHashMap<>();

  /** A form for a course's next visit. */
  VisitForm(Course course) {
    super(new GridBagLayout());
    boolean dated = course.last().time().date().isPresent();
    field(dated ? "date" : "day", dated ? "date" : "day");
    for (String key : KEYS.subList(0, 6)) {
      field(key, words(key));
    }
    String unit = course.order().measurements().unit().symbol();
    for (Level level : Level.values()) {
      if (course.order().measurements().circumference().containsKey(level)) {
        field("circumference." + level.key(), "round " + words(level.key()) + ", " + unit);
      }
    }
    for (String key : KEYS.subList(6, KEYS.size())) {
      field(key, words(key));
    }
  }

  private static String words(String key) {
    return key.replace("pip-extension-deficit", "PIP short of extension")
        .replace("pip-flexion", "PIP flexion")
        .replace("dip-flexion", "DIP flexion")
        .replaceFirst("^pip$", "PIP joint")
        .replaceFirst("^dip$", "DIP joint")
        .replace(".", ", ")
        .replace('-', ' ');
  }

  private void field(String path, String words) {
    InputKey key = KeyTable.visits().find("visits[]." + path).orElseThrow();
    JComponent field = new JTextField(9);
    if (!key.choices().isEmpty()) {
      JComboBox<String> box = new JComboBox<>();
      box.addItem("");
      key.choices().forEach(box::addItem);
      field = box;
    }
    field.setName("visit." + path);
    field.setToolTipText(key.comment());
    fields.put(path, field);
    JLabel label = new JLabel(words + (key.unit().equals("mm") ? "" : unit(key)));
    label.setLabelFor(field);
    GridBagConstraints at = new GridBagConstraints();
    at.gridy = fields.size();
    at.insets = new Insets(2, 4, 2, 4);
    at.anchor = GridBagConstraints.LINE_START;
    add(label, at);
    at.gridx = 1;
    at.weightx = 1;
    at.fill = GridBagConstraints.HORIZONTAL;
    add(field, at);
  }

  private static String unit(InputKey key) {
    return key.unit().isEmpty() || key.unit().equals("days")
        ? ""
        : (key.unit().equals("°") ? "" : ",") + " " + key.unit().toLowerCase(Locale.ROOT);
  }

  /** What was filled in, each {@code KEY=VALUE}. */
  List<String> readings() {
    List<String> readings = new ArrayList<>();
    fields.forEach(
        (key, field) -> {
          String value =
              field instanceof JTextField text
                  ? text.getText().strip()
                  : String.valueOf(((JComboBox<?>) field).getSelectedItem());
          if (!value.isEmpty()) {
            readings.add(key + "=" + value);
          }
        });
    return readings;
  }

  /** Empties all fields. */
  void clear() {
    for (JComponent field : fields.values()) {
      if (field instanceof JTextField text) {
        text.setText("");
      } else {
        ((JComboBox<?>) field).setSelectedIndex(0);
      }
    }
  }
}
