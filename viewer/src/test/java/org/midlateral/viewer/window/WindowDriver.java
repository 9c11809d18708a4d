package org.midlateral.viewer.window;

import java.awt.AWTEvent;
import java.awt.AWTException;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dialog;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.event.WindowEvent;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.IntSupplier;
import java.util.function.Predicate;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JSlider;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.midlateral.viewer.memory.SettingsFolder;
import org.midlateral.viewer.render.OffscreenRenderer;
import org.midlateral.viewer.render.RendererFailure;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.view.FingerView;
import org.midlateral.viewer.view.PartVisibility;

/** The real window on the real screen, driven by mouse and keys. One in the process. */
final class WindowDriver {
  private static final long PATIENCE_MILLIS = 60_000;
  private static final int PAUSE_MILLIS = 30;
  private static final int QUIET_PAUSES = 2;
  private static final int MOST_PAUSES = 60;
  private static final int MOST_TRIES = 20;
  private static WindowDriver driver;

  final MainWindow window;

  /** Of its own: nothing of the user's is read or written. */
  final SettingsFolder settings;

  private final Robot robot;

  /** What has come in from mouse and keyboard so far. */
  private final AtomicInteger pressed = new AtomicInteger();

  private final AtomicInteger released = new AtomicInteger();
  private final AtomicInteger keysPressed = new AtomicInteger();

  private WindowDriver() throws RendererFailure, AWTException, IOException {
    OffscreenRenderer renderer = OffscreenRenderer.open();
    settings = new SettingsFolder(Files.createTempDirectory("viewer-settings"));
    Runtime.getRuntime().addShutdownHook(new Thread(renderer::close));
    robot = new Robot();
    robot.setAutoDelay(15);
    Toolkit.getDefaultToolkit()
        .addAWTEventListener(this::count, AWTEvent.MOUSE_EVENT_MASK | AWTEvent.KEY_EVENT_MASK);
    window =
        inSwing(
            () -> {
              MainWindow made = MainWindow.open(renderer, settings);
              made.setLocation(0, 0);
              made.setVisible(true);
              return made;
            });
    until("the first frame", () -> view().frame() != null && window.shown().isPresent());
  }

  private void count(AWTEvent event) {
    switch (event.getID()) {
      case MouseEvent.MOUSE_PRESSED -> pressed.incrementAndGet();
      case MouseEvent.MOUSE_RELEASED -> released.incrementAndGet();
      case KeyEvent.KEY_PRESSED -> keysPressed.incrementAndGet();
      default -> {}
    }
  }

  /** The window with a fresh sample in it. */
  static synchronized WindowDriver withSample(Sample sample)
      throws RendererFailure, AWTException, IOException {
    if (driver == null) {
      driver = new WindowDriver();
    }
    driver.closeDialogs();
    driver.inSwing(
        () -> {
          driver.view().setMeasuring(false);
          driver.window.session().openSample(sample);
          return null;
        });
    driver.settle();
    return driver;
  }

  /**
   * A test that failed may have left a dialog open, which would keep every other from the window.
   */
  private void closeDialogs() {
    until(
        "the end of dialogs left open",
        () -> {
          boolean none = true;
          for (Window each : Window.getWindows()) {
            if (each instanceof Dialog && each.isShowing()) {
              none = false;
              each.dispatchEvent(new WindowEvent(each, WindowEvent.WINDOW_CLOSING));
              each.dispose();
            }
          }
          return none;
        });
  }

  /** A dialog by name, while it is on the screen. */
  Optional<JDialog> dialog(String name) {
    for (Window each : Window.getWindows()) {
      if (each instanceof JDialog dialog && each.isShowing() && name.equals(each.getName())) {
        return Optional.of(dialog);
      }
    }
    return Optional.empty();
  }

  /** What a window's close button does; does not wait for its end. */
  void close(Window of) {
    SwingUtilities.invokeLater(
        () -> of.dispatchEvent(new WindowEvent(of, WindowEvent.WINDOW_CLOSING)));
  }

  <T> T inSwing(Callable<T> call) {
    FutureTask<T> task = new FutureTask<>(call);
    SwingUtilities.invokeLater(task);
    try {
      return task.get();
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  FingerView view() {
    return find(FingerView.class, "view");
  }

  /** Waits until something holds. */
  void until(String what, BooleanSupplier holds) {
    long end = System.currentTimeMillis() + PATIENCE_MILLIS;
    while (!inSwing(holds::getAsBoolean)) {
      if (System.currentTimeMillis() > end) {
        throw new AssertionError("waited in vain for " + what + "; the screen: " + screen());
      }
      robot.delay(PAUSE_MILLIS);
    }
  }

  /** Keeps what is on the screen, for whoever looks into a failure. */
  private String screen() {
    File file = new File("target", "screen-" + System.currentTimeMillis() + ".png");
    try {
      Dimension size = Toolkit.getDefaultToolkit().getScreenSize();
      ImageIO.write(robot.createScreenCapture(new Rectangle(size)), "png", file);
      return file.getAbsolutePath();
    } catch (IOException e) {
      return "not kept, " + e.getMessage();
    }
  }

  /**
   * Waits until the events sent so far are dealt with. The robot's own way asks the display for a
   * selection, which this process may own itself, and then waits for itself for seconds.
   */
  private void idle() {
    EventQueue queue = Toolkit.getDefaultToolkit().getSystemEventQueue();
    int quiet = 0;
    for (int i = 0; i < MOST_PAUSES && quiet < QUIET_PAUSES; i++) {
      robot.delay(PAUSE_MILLIS);
      quiet = inSwing(() -> queue.peekEvent() == null) ? quiet + 1 : 0;
    }
  }

  /** Waits until the newest draft is on the screen, drawn smoothly. */
  void settle() {
    until("the newest draft", window::isCurrent);
    robot.delay(80);
    until("a smooth frame of now", () -> view().isSettled());
  }

  /** Pulls the pieces apart by so much. */
  void pull(int millimetres) {
    inSwing(
        () -> {
          find(JSlider.class, "pull").setValue(millimetres);
          return null;
        });
    settle();
  }

  /** Shows, hides or makes see-through. */
  void show(String part, PartVisibility visibility) {
    inSwing(
        () -> {
          find(JComboBox.class, "show." + part).setSelectedItem(visibility);
          return null;
        });
    settle();
  }

  /** Colours the pieces by a quantity. */
  void colour(Quantity quantity) {
    inSwing(
        () -> {
          find(JComboBox.class, "quantity").setSelectedItem(quantity);
          return null;
        });
    settle();
  }

  <T extends Component> T find(Class<T> type, String name) {
    for (Window each : Window.getWindows()) {
      Component found = each.isShowing() ? search(each, c -> name.equals(c.getName())) : null;
      if (found != null) {
        return type.cast(found);
      }
    }
    throw new AssertionError("nothing on the screen is named " + name);
  }

  private static Component search(Container in, Predicate<Component> wanted) {
    for (Component c : in.getComponents()) {
      if (wanted.test(c)) {
        return c;
      }
      Component found = c instanceof Container inner ? search(inner, wanted) : null;
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  /** Whether a button with some text is on the screen. */
  boolean hasButton(String text) {
    return button(text) != null;
  }

  private AbstractButton button(String text) {
    for (Window each : Window.getWindows()) {
      Component found =
          each.isShowing()
              ? search(
                  each,
                  c ->
                      c instanceof AbstractButton b
                          && !(c instanceof JMenuItem)
                          && text.equals(b.getText())
                          && c.isShowing())
              : null;
      if (found != null) {
        return (AbstractButton) found;
      }
    }
    return null;
  }

  /** Whether a text stands in some area on the screen. */
  boolean hasText(String text) {
    for (Window each : Window.getWindows()) {
      Predicate<Component> wanted =
          c -> c instanceof JTextArea area && area.isShowing() && text.equals(area.getText());
      if (each.isShowing() && search(each, wanted) != null) {
        return true;
      }
    }
    return false;
  }

  /**
   * Presses a button: in the window with the mouse, in a dialog as assistive technology does.
   * Without a window manager a dialog may come up behind the window, where no click reaches it.
   */
  void press(String buttonText) {
    until("a button " + buttonText, () -> hasButton(buttonText));
    AbstractButton button = inSwing(() -> button(buttonText));
    if (SwingUtilities.getWindowAncestor(button) instanceof Dialog) {
      // What it opens may be modal, and last as long as that.
      SwingUtilities.invokeLater(
          () -> button.getAccessibleContext().getAccessibleAction().doAccessibleAction(0));
      idle();
    } else {
      click(button);
    }
  }

  /** Puts a path into the file dialog that is about to open, and confirms it by a button. */
  void choose(Path path, String confirm) {
    until("the file dialog with " + confirm, () -> hasButton(confirm) && fileName() != null);
    JTextField field = inSwing(this::fileName);
    inSwing(
        () -> {
          field.setText(path.toString());
          return null;
        });
    press(confirm);
    until("the end of the file dialog", () -> !field.isShowing());
  }

  /** The field for the name in the file dialog that is open; null where none is. */
  private JTextField fileName() {
    for (Window each : Window.getWindows()) {
      Component chooser =
          each.isShowing() ? search(each, c -> c instanceof JFileChooser && c.isShowing()) : null;
      if (chooser != null) {
        return (JTextField) search((Container) chooser, c -> c instanceof JTextField);
      }
    }
    return null;
  }

  String label(String name) {
    return inSwing(() -> find(JLabel.class, name).getText());
  }

  /**
   * Clicks the middle of a component, where that is once the pointer is there. Without a window
   * manager a new dialog may come up late, or behind: what does not come in at all is done again.
   */
  void click(Component component) {
    for (int i = 0; i < MOST_TRIES; i++) {
      inSwing(
          () -> {
            if (SwingUtilities.getWindowAncestor(component) instanceof Dialog dialog) {
              dialog.toFront();
            }
            if (component.getParent() instanceof JComponent parent) {
              parent.scrollRectToVisible(component.getBounds());
            }
            return null;
          });
      Rectangle place = place(component);
      robot.mouseMove((int) place.getCenterX(), (int) place.getCenterY());
      idle();
      if (place.equals(place(component)) && comesIn(() -> {})) {
        return;
      }
    }
    throw new AssertionError("no click comes in at " + component + "; the screen: " + screen());
  }

  void click(int x, int y) {
    robot.mouseMove(x, y);
    button(() -> {});
  }

  /** Clicks while a key is held down. */
  void clickWith(int key, int x, int y) {
    robot.mouseMove(x, y);
    robot.keyPress(key);
    button(() -> {});
    robot.keyRelease(key);
    idle();
  }

  /** Presses, moves and lets go, and waits until both ends of it have come in. */
  private void button(Runnable between) {
    if (!comesIn(between)) {
      throw new AssertionError("no click comes in; the screen: " + screen());
    }
  }

  private boolean comesIn(Runnable between) {
    int presses = pressed.get();
    int releases = released.get();
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    between.run();
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    for (int i = 0; i < MOST_PAUSES * 3; i++) {
      if (pressed.get() > presses && released.get() > releases) {
        idle();
        return true;
      }
      robot.delay(PAUSE_MILLIS);
    }
    return false;
  }

  /** Turns the wheel where the pointer is, away from its user for less than none. */
  void wheel(int notches) {
    robot.mouseWheel(notches);
    robot.delay(PAUSE_MILLIS);
    idle();
  }

  void moveTo(int x, int y) {
    robot.mouseMove(x - 1, y);
    robot.mouseMove(x, y);
    idle();
  }

  void drag(Point from, Point to) {
    robot.mouseMove(from.x, from.y);
    int steps = 12;
    button(
        () -> {
          for (int i = 1; i <= steps; i++) {
            robot.mouseMove(
                from.x + (to.x - from.x) * i / steps, from.y + (to.y - from.y) * i / steps);
          }
        });
  }

  Rectangle place(Component component) {
    return inSwing(() -> new Rectangle(component.getLocationOnScreen(), component.getSize()));
  }

  /** Clicks a component and waits until it has the keys. */
  private void focus(Component field) {
    click(field);
    until("focus in " + field.getName(), field::isFocusOwner);
  }

  /** Replaces what stands in a field by typing. */
  void fill(String name, String text) {
    inSwing(
        () -> {
          window.goTo(name);
          return null;
        });
    Component field = find(Component.class, name);
    focus(field);
    keys(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
    keys(KeyEvent.VK_DELETE);
    type(text);
    idle();
  }

  void type(String text) {
    awaiting(
        () -> {
          int keys = 0;
          for (int i = 0; i < text.length(); i++) {
            keys += press(codes(text.charAt(i)));
          }
          return keys;
        });
  }

  /** The keys of a character, pressed together. */
  private static int[] codes(char c) {
    return switch (c) {
      case '"' -> new int[] {KeyEvent.VK_SHIFT, KeyEvent.VK_QUOTE};
      case '_' -> new int[] {KeyEvent.VK_SHIFT, KeyEvent.VK_MINUS};
      default -> {
        int code = KeyEvent.getExtendedKeyCodeForChar(c);
        yield Character.isUpperCase(c) ? new int[] {KeyEvent.VK_SHIFT, code} : new int[] {code};
      }
    };
  }

  /** Presses keys together. */
  void keys(int... codes) {
    awaiting(() -> press(codes));
  }

  /** Presses keys and waits until as many have come in. */
  private void awaiting(IntSupplier pressing) {
    int before = keysPressed.get();
    int sent = pressing.getAsInt();
    until("the keys to come in", () -> keysPressed.get() >= before + sent);
    idle();
  }

  private int press(int... codes) {
    for (int code : codes) {
      robot.keyPress(code);
    }
    for (int i = codes.length - 1; i >= 0; i--) {
      robot.keyRelease(codes[i]);
    }
    return codes.length;
  }

  BufferedImage grab(Component component) {
    robot.mouseMove(1270, 795);
    idle();
    robot.delay(60);
    return robot.createScreenCapture(place(component));
  }

  BufferedImage grab(Rectangle place) {
    return robot.createScreenCapture(place);
  }

  static String lower(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }
}
