package org.midlateral.viewer;

import java.awt.Window;
import java.awt.event.WindowEvent;
import java.util.concurrent.TimeUnit;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;

/** A program for a test: starts the viewer, leaves it open a while, and closes it. */
final class StartAndClose {
  private static final int OPEN_MILLIS = 3000;

  private StartAndClose() {}

  /** Starts the viewer with the same arguments. */
  public static void main(String[] args) {
    Thread closer = new Thread(StartAndClose::close);
    closer.setDaemon(true);
    closer.start();
    Viewer.main(args);
  }

  private static void close() {
    try {
      while (true) {
        TimeUnit.MILLISECONDS.sleep(OPEN_MILLIS);
        SwingUtilities.invokeAndWait(
            () -> {
              for (Window window : Window.getWindows()) {
                if (window instanceof JFrame && window.isShowing()) {
                  window.dispatchEvent(new WindowEvent(window, WindowEvent.WINDOW_CLOSING));
                }
              }
            });
      }
    } catch (InterruptedException | java.lang.reflect.InvocationTargetException e) {
      throw new IllegalStateException(e);
    }
  }
}
