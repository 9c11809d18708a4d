package org.midlateral.viewer;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dialog;
import java.awt.Window;
import java.util.concurrent.TimeUnit;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;

/** A program for a test: starts the viewer, prints what a dialog says, and closes it. */
final class StartAndRead {
  private StartAndRead() {}

  /** Starts the viewer with the same arguments. */
  public static void main(String[] args) {
    Thread reader = new Thread(StartAndRead::read);
    reader.setDaemon(true);
    reader.start();
    Viewer.main(args);
  }

  private static void read() {
    try {
      while (true) {
        TimeUnit.MILLISECONDS.sleep(50);
        SwingUtilities.invokeAndWait(
            () -> {
              for (Window window : Window.getWindows()) {
                if (window instanceof Dialog dialog && window.isShowing()) {
                  System.out.println("dialog: " + text(dialog));
                  dialog.dispose();
                }
              }
            });
      }
    } catch (InterruptedException | java.lang.reflect.InvocationTargetException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String text(Container in) {
    StringBuilder text = new StringBuilder();
    for (Component c : in.getComponents()) {
      text.append(c instanceof JTextArea area ? area.getText() : "");
      text.append(c instanceof Container inner ? text(inner) : "");
    }
    return text.toString();
  }
}
