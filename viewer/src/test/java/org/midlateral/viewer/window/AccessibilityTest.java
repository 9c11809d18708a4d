package org.midlateral.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.FocusTraversalPolicy;
import java.awt.Graphics2D;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JSlider;
import javax.swing.MenuElement;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.midlateral.viewer.dialog.MessageDialogs;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.view.SceneView;

/** Everything is reached by the Tab key, and large enough to read. */
@ExtendWith(OnDisplay.class)
class AccessibilityTest {
  private static final double LEAST_SIZE = 12;

  /** As many as a line of one pixel along a small button. */
  private static final int LEAST_PIXELS = 30;

  private WindowDriver driver;

  @BeforeEach
  void open() throws Exception {
    driver = WindowDriver.withSample(Sample.SLIM);
  }

  private static void visit(Container in, Consumer<Component> visitor) {
    for (Component c : in.getComponents()) {
      visitor.accept(c);
      if (c instanceof Container inner && c.isVisible()) {
        visit(inner, visitor);
      }
    }
  }

  private static boolean isControl(Component c) {
    boolean control =
        c instanceof AbstractButton && !(c instanceof JMenuItem)
            || c instanceof JComboBox<?>
            || c instanceof JSlider
            || c instanceof JList<?>
            || c instanceof SceneView
            || c instanceof JTextComponent text && text.isEditable();
    // A box's own arrow, a scroll bar's ends: parts of controls.
    boolean part = c.getParent() instanceof JComboBox<?> || !c.isFocusable();
    return control && !part && c.isShowing() && c.isEnabled();
  }

  private Set<Component> reached() {
    FocusTraversalPolicy policy = driver.window.getFocusTraversalPolicy();
    Set<Component> reached = new HashSet<>();
    Component at = policy.getFirstComponent(driver.window);
    while (at != null && reached.add(at)) {
      at = policy.getComponentAfter(driver.window, at);
    }
    return reached;
  }

  @Test
  void everyControlIsReachedByTab() {
    List<String> missed =
        driver.inSwing(
            () -> {
              Set<Component> reached = reached();
              List<String> names = new ArrayList<>();
              visit(
                  driver.window.getContentPane(),
                  c -> {
                    if (isControl(c) && !reached.contains(c)) {
                      names.add(c.getClass().getSimpleName() + " " + c.getName());
                    }
                  });
              assertThat(reached.size()).isGreaterThan(30);
              return names;
            });
    assertThat(missed).isEmpty();
  }

  /** Whoever goes by Tab sees where they are: a control's own picture is another with the keys. */
  @Test
  void focusIsSeen() {
    List<Component> controls =
        driver.inSwing(() -> reached().stream().filter(AccessibilityTest::isControl).toList());
    assertThat(controls.size()).isGreaterThan(30);
    assertThat(withoutFocusSeen(controls)).isEmpty();
    // In the dark, one of each kind.
    Map<Class<?>, Component> kinds = new HashMap<>();
    controls.forEach(control -> kinds.put(control.getClass(), control));
    assertThat(kinds.size()).isGreaterThan(6);
    setDark(true);
    try {
      assertThat(withoutFocusSeen(List.copyOf(kinds.values()))).isEmpty();
    } finally {
      setDark(false);
    }
  }

  private void setDark(boolean dark) {
    driver.inSwing(
        () -> {
          driver.window.setDark(dark);
          return null;
        });
    driver.settle();
  }

  private List<String> withoutFocusSeen(List<Component> controls) {
    List<String> unseen = new ArrayList<>();
    for (Component control : controls) {
      driver.inSwing(control::requestFocusInWindow);
      driver.until("focus in " + control.getName(), control::isFocusOwner);
      BufferedImage with = driver.inSwing(() -> painted(control));
      Component other = control.equals(controls.get(0)) ? controls.get(1) : controls.get(0);
      driver.inSwing(other::requestFocusInWindow);
      driver.until("focus elsewhere", other::isFocusOwner);
      BufferedImage without = driver.inSwing(() -> painted(control));
      if (different(with, without) < LEAST_PIXELS) {
        unseen.add(control.getClass().getSimpleName() + " " + control.getName());
      }
    }
    return unseen;
  }

  private static BufferedImage painted(Component control) {
    BufferedImage image =
        new BufferedImage(control.getWidth(), control.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    control.paint(g);
    g.dispose();
    return image;
  }

  /** Pixels that differ by a quarter of the way from black to white. */
  private static int different(BufferedImage one, BufferedImage other) {
    int count = 0;
    for (int y = 0; y < one.getHeight(); y++) {
      for (int x = 0; x < one.getWidth(); x++) {
        count += Pixels.apart(one.getRGB(x, y), other.getRGB(x, y)) > 60 ? 1 : 0;
      }
    }
    return count;
  }

  @Test
  void figuresAndControlsSayWhatTheyAreOf() {
    List<String> mute =
        driver.inSwing(
            () -> {
              List<String> names = new ArrayList<>();
              visit(
                  driver.window.getLayeredPane(),
                  c -> {
                    boolean figure =
                        c instanceof JLabel
                            && c.getName() != null
                            && c.getName().contains("section.");
                    boolean control =
                        isControl(c) && !(c instanceof SceneView) && !isOfWords(c.getName());
                    boolean told = figure || control;
                    String said = told ? ((JComponent) c).getToolTipText() : "";
                    if (told && (said == null || said.isBlank())) {
                      names.add(c.getClass().getSimpleName() + " " + c.getName());
                    }
                  });
              return names;
            });
    assertThat(mute).isEmpty();
  }

  /** The heads of the form's sections say in words what stands under them. */
  private static boolean isOfWords(String name) {
    return name != null && name.startsWith("group.");
  }

  @Test
  void noTextIsSmall() {
    List<String> small =
        driver.inSwing(
            () -> {
              List<String> names = new ArrayList<>();
              visit(
                  driver.window.getLayeredPane(),
                  c -> {
                    boolean text = c instanceof JLabel || isControl(c) || c instanceof JMenu;
                    if (text && c.getFont().getSize2D() < LEAST_SIZE) {
                      names.add(c.getClass().getSimpleName() + " " + c.getName());
                    }
                  });
              return names;
            });
    assertThat(small).isEmpty();
  }

  /** At every size asked for nothing stands outside the window. */
  @Test
  void everyControlIsInsideTheWindow() throws Exception {
    // The stoutest of the samples has the longest figures.
    driver = WindowDriver.withSample(Sample.BULBOUS);
    for (int[] size : new int[][] {{1024, 700}, {1366, 768}, {1280, 800}}) {
      driver.inSwing(
          () -> {
            driver.window.setSize(size[0], size[1]);
            driver.window.validate();
            return null;
          });
      driver.settle();
      everyControlIsInside(size[0], size[1]);
    }
  }

  private void everyControlIsInside(int width, int height) {
    everyFigureIsWhole(width, height);
    List<String> outside =
        driver.inSwing(
            () -> {
              List<String> names = new ArrayList<>();
              Container all = driver.window.getContentPane();
              visit(
                  all,
                  c -> {
                    boolean scrolled =
                        javax.swing.SwingUtilities.getAncestorOfClass(
                                javax.swing.JViewport.class, c)
                            != null;
                    if (isControl(c) && !scrolled) {
                      var place =
                          javax.swing.SwingUtilities.convertRectangle(
                              c.getParent(), c.getBounds(), all);
                      if (!new java.awt.Rectangle(all.getSize()).contains(place)) {
                        names.add(c.getClass().getSimpleName() + " " + c.getName());
                      }
                    }
                  });
              return names;
            });
    assertThat(outside).as("%d by %d", width, height).isEmpty();
  }

  /** No figure of the section is cut off, nor what it is called. */
  private void everyFigureIsWhole(int width, int height) {
    List<String> cut =
        driver.inSwing(
            () -> {
              List<String> texts = new ArrayList<>();
              Container table = driver.find(JLabel.class, "section.bonded.rigidity").getParent();
              visit(
                  table,
                  c -> {
                    if (c instanceof JLabel label && c.getWidth() < c.getPreferredSize().width) {
                      texts.add(label.getText());
                    }
                  });
              return texts;
            });
    assertThat(cut).as("%d by %d", width, height).isEmpty();
  }

  @Test
  void everyControlHasANameForAScreenReader() {
    List<String> nameless =
        driver.inSwing(
            () -> {
              List<String> names = new ArrayList<>();
              visit(
                  driver.window.getContentPane(),
                  c -> {
                    String name = c.getAccessibleContext().getAccessibleName();
                    if (isControl(c) && (name == null || name.isBlank())) {
                      names.add(c.getClass().getSimpleName() + " " + c.getName());
                    }
                  });
              return names;
            });
    assertThat(nameless).isEmpty();
  }

  @Test
  void everyShortcutIsInTheListOfKeys() {
    List<String> missing =
        driver.inSwing(
            () -> {
              List<String> keys = new ArrayList<>();
              for (MenuElement menu : driver.window.getJMenuBar().getSubElements()) {
                shortcuts(menu, keys);
              }
              assertThat(keys).contains("Ctrl+N", "F11", "Ctrl+Shift+S");
              keys.removeIf(key -> MessageDialogs.KEYS.contains(key) || key.matches("Alt\\+[1-6]"));
              return keys;
            });
    assertThat(missing).isEmpty();
  }

  /** Written as the list has them. */
  private static void shortcuts(MenuElement in, List<String> keys) {
    if (in instanceof JMenuItem item && item.getAccelerator() != null) {
      int modifiers = item.getAccelerator().getModifiers();
      String with = InputEvent.getModifiersExText(modifiers);
      String key = KeyEvent.getKeyText(item.getAccelerator().getKeyCode());
      String order = with.equals("Shift+Ctrl") ? "Ctrl+Shift" : with;
      keys.add(order.isEmpty() ? key : order + "+" + key);
    }
    for (MenuElement inner : in.getSubElements()) {
      shortcuts(inner, keys);
    }
  }
}
