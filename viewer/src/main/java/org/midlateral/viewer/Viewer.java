package org.midlateral.viewer;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.io.PrintStream;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.SwingUtilities;
import org.midlateral.document.Defect;
import org.midlateral.measurement.Order;
import org.midlateral.viewer.memory.SettingsFolder;
import org.midlateral.viewer.render.OffscreenRenderer;
import org.midlateral.viewer.render.RendererFailure;
import org.midlateral.viewer.window.MainWindow;
import org.midlateral.viewer.window.StartTrouble;

/** Starts the viewer. */
public final class Viewer {
  /** Exit status: the window was closed by its user. */
  public static final int DONE = 0;

  /** Exit status: the command line or the file is wrong. */
  public static final int WRONG_INPUT = 2;

  /** Exit status: there is no display, or no OpenGL on it. */
  public static final int MACHINE = 4;

  private Viewer() {}

  /**
   * Opens the viewer and ends the process when it is closed.
   *
   * @param args at most one: the measurement file
   */
  public static void main(String[] args) {
    if (args.length > 1 || args.length == 1 && args[0].startsWith("-")) {
      System.err.println("midlateral: the viewer takes one measurement file, or none");
      System.exit(WRONG_INPUT);
    }
    System.exit(open(args.length == 0 ? null : Path.of(args[0])));
  }

  /**
   * Opens the viewer and waits until it is closed. Says on standard error what went wrong.
   *
   * @param file a measurement file, or null to start on a sample
   * @return exit status
   */
  public static int open(Path file) {
    return open(file, System.err);
  }

  static int open(Path file, PrintStream err) {
    if (GraphicsEnvironment.isHeadless()) {
      err.println("midlateral: the viewer needs a display, and there is none here");
      return MACHINE;
    }
    AtomicReference<MainWindow> window = new AtomicReference<>();
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, e) ->
            defect(e, Optional.ofNullable(window.get()).flatMap(MainWindow::order), err));
    try {
      // Before the renderer looks for it, which would not know what to say.
      GraphicsEnvironment.getLocalGraphicsEnvironment().getDefaultScreenDevice();
    } catch (HeadlessException | AWTError e) {
      err.println("midlateral: the viewer needs a display, and this one cannot be opened");
      return MACHINE;
    }
    SettingsFolder folder = SettingsFolder.ofUser();
    // While the renderer starts.
    SwingUtilities.invokeLater(() -> MainWindow.prepare(folder));
    try (OffscreenRenderer renderer = OffscreenRenderer.open()) {
      // A process that is told to end must not tear the display down under the drawing thread.
      Runtime.getRuntime().addShutdownHook(new Thread(renderer::close));
      return show(renderer, folder, file, window, err);
    } catch (RendererFailure failure) {
      tell("the viewer cannot draw: " + failure.getMessage(), err);
      return MACHINE;
    }
  }

  /** Whoever started it with a click sees no standard error. */
  private static void tell(String sentence, PrintStream err) {
    err.println("midlateral: " + sentence);
    StartTrouble.show(sentence);
  }

  /** No trace reaches a user: what failed and where, in a line, and a file with the rest. */
  static void defect(Throwable e, Optional<Order> shown, PrintStream err) {
    Defect defect = new Defect(e, List.of("midlateral view"), shown.stream().toList());
    String request = Defect.request(defect.write(Optional.empty()));
    err.println("midlateral: a defect of this program, " + request + ": " + defect.inShort());
  }

  private static int show(
      OffscreenRenderer renderer,
      SettingsFolder folder,
      Path file,
      AtomicReference<MainWindow> opened,
      PrintStream err) {
    CountDownLatch closed = new CountDownLatch(1);
    AtomicReference<String> trouble = new AtomicReference<>();
    try {
      SwingUtilities.invokeAndWait(
          () -> {
            MainWindow window = MainWindow.open(renderer, folder);
            opened.set(window);
            if (file != null) {
              window.open(file).ifPresent(trouble::set);
            }
            if (trouble.get() != null) {
              window.dispose();
              closed.countDown();
              return;
            }
            window.addWindowListener(
                new WindowAdapter() {
                  @Override
                  public void windowClosed(WindowEvent e) {
                    closed.countDown();
                  }
                });
            window.setVisible(true);
            SwingUtilities.invokeLater(window::offerUnsaved);
          });
      closed.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException(e.getCause());
    }
    if (trouble.get() != null) {
      tell(trouble.get(), err);
      return WRONG_INPUT;
    }
    return DONE;
  }
}
