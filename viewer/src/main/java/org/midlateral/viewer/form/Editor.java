package org.midlateral.viewer.form;

import java.util.Objects;
import javax.swing.JComponent;
import org.midlateral.measurement.LengthUnit;

/** What a value is changed with. */
interface Editor {
  JComponent component();

  /** Shows a text, which is no edit; empty for the default. */
  void show(String text, LengthUnit unit);

  /** A severity the field is outlined with: "error", "warning" or null. */
  default void outline(String outline) {
    if (!Objects.equals(outline, component().getClientProperty("JComponent.outline"))) {
      component().putClientProperty("JComponent.outline", outline);
      component().repaint();
    }
  }
}
