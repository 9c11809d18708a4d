package org.midlateral.viewer.window;

import java.lang.reflect.InvocationTargetException;
import javax.swing.SwingUtilities;
import org.midlateral.viewer.dialog.MessageDialogs;

/** Says in a window of its own why the viewer does not open. */
public final class StartTrouble {
  private StartTrouble() {}

  /** Shows a sentence and waits until it has been read. */
  public static void show(String sentence) {
    try {
      SwingUtilities.invokeAndWait(
          () -> {
            Appearance.apply(false);
            MessageDialogs.trouble(null, sentence);
          });
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (InvocationTargetException e) {
      throw new IllegalStateException(e.getCause());
    }
  }
}
