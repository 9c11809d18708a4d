package org.midlateral.viewer.window;

import java.awt.Toolkit;
import java.lang.reflect.Field;
import java.lang.reflect.InaccessibleObjectException;

/** The name by which X11 desktops tell one program's windows from another's. */
final class WindowClass {
  private static final String NAME = "midlateral";

  private WindowClass() {}

  /**
   * Names the windows opened from now on. Java has no call for it, only a field, which the
   * launchers open ({@code --add-opens}); started otherwise, the windows are named after the class
   * that was started.
   */
  static void set() {
    Toolkit toolkit = Toolkit.getDefaultToolkit();
    try {
      Field name = toolkit.getClass().getDeclaredField("awtAppClassName");
      name.setAccessible(true);
      name.set(null, NAME);
    } catch (NoSuchFieldException | IllegalAccessException | InaccessibleObjectException e) {
      // Another desktop, or not opened: only the name is less plain.
      return;
    }
  }
}
