package org.midlateral.viewer.window;

import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.Timer;
import org.midlateral.viewer.dialog.MessageDialogs;
import org.midlateral.viewer.memory.Settings;
import org.midlateral.viewer.memory.SettingsFolder;
import org.midlateral.viewer.memory.Unsaved;

/** What the window remembers from one start to the next, and the values that are not saved yet. */
final class WindowMemory {
  private static final int QUIET_MILLIS = 1000;

  private final JFrame window;
  private final Session session;
  private final SettingsFolder folder;
  private final Unsaved unsaved;

  /** What is not saved is kept when it has been left alone for a moment. */
  private final Timer keeping = new Timer(QUIET_MILLIS, e -> keep());

  private Settings settings;

  WindowMemory(JFrame window, Session session, SettingsFolder folder, Settings settings) {
    this.window = window;
    this.session = session;
    this.folder = folder;
    this.settings = settings;
    unsaved = Unsaved.ofThisProcess(folder);
    keeping.setRepeats(false);
  }

  Settings settings() {
    return settings;
  }

  /** A file was opened or saved. */
  void used(Path file) {
    remember(settings.with(file));
  }

  void setDark(boolean dark) {
    if (dark != settings.dark()) {
      remember(settings.withDark(dark));
    }
  }

  private void remember(Settings other) {
    settings = other;
    folder.write(settings);
  }

  /** Brings the window where it stood the last time, if that is on a screen that is there. */
  void place() {
    Rectangle screens = new Rectangle();
    for (GraphicsDevice screen :
        GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices()) {
      screens.add(screen.getDefaultConfiguration().getBounds());
    }
    Optional<Rectangle> last = settings.window().filter(screens::contains);
    last.ifPresentOrElse(window::setBounds, () -> window.setLocationRelativeTo(null));
  }

  /** A value was changed. */
  void changed() {
    keeping.restart();
  }

  private void keep() {
    if (session.isDirty()) {
      unsaved.keep(session.draft(), session.file());
    } else {
      unsaved.clear();
    }
  }

  /** Asks whether to take up what a former process left unsaved. */
  void offerUnsaved() {
    Optional<Unsaved> found = Unsaved.abandoned(folder);
    Optional<Unsaved.Left> left = found.flatMap(Unsaved::read);
    if (left.isEmpty()) {
      return;
    }
    String whose = left.get().draft().get("reference");
    String of = left.get().of().map(path -> ", of " + path).orElse("");
    String question =
        "Values of "
            + (whose.isEmpty() ? "a finger without a reference" : whose)
            + of
            + " were typed in and not saved before the program ended.";
    int answer =
        MessageDialogs.ask(window, "Unsaved values", question, "Restore them", "Discard", "Later");
    if (answer == 0) {
      session.takeUp(left.get());
      keep();
    }
    if (answer == 0 || answer == 1) {
      found.get().clear();
    }
  }

  /**
   * The window is closed by its user: nothing is left to be taken up.
   *
   * @param windowed whether its place is one to be remembered
   */
  void close(boolean windowed) {
    if (windowed) {
      remember(settings.withWindow(window.getBounds()));
    }
    keeping.stop();
    unsaved.clear();
  }
}
