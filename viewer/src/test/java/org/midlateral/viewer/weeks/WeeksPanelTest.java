package org.midlateral.viewer.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.measurement.file.Courses;
import org.midlateral.recipe.course.CourseFile;
import org.midlateral.recipe.course.FollowUp;

/** A visit typed in: the file and the curve grow, or both stay as they were. */
class WeeksPanelTest {
  private static final Path SAMPLE = Path.of("..", "samples", "courses", "ring-twelve-weeks.yaml");
  private static final Dimension SIZE = new Dimension(1120, 860);

  @TempDir Path directory;
  private Path path;
  private WeeksPanel panel;

  @BeforeEach
  void open() throws Exception {
    path = Files.copy(SAMPLE, directory.resolve("course.yaml"));
    CourseFile file = new CourseFile(path);
    FollowUp told = FollowUp.of(file.read().course());
    SwingUtilities.invokeAndWait(
        () -> {
          panel = new WeeksPanel(file, told);
          panel.setSize(SIZE);
          layOut(panel);
        });
  }

  private static void layOut(Container in) {
    in.doLayout();
    for (Component c : in.getComponents()) {
      if (c instanceof Container inner) {
        layOut(inner);
      }
    }
  }

  private static Component find(Container in, String name) {
    for (Component c : in.getComponents()) {
      if (name.equals(c.getName())) {
        return c;
      }
      Component inner = c instanceof Container more ? find(more, name) : null;
      if (inner != null) {
        return inner;
      }
    }
    return null;
  }

  private <C> C at(String name, Class<C> type) {
    return type.cast(find(panel, name));
  }

  private void add() throws Exception {
    JButton button = at("weeks.add", JButton.class);
    SwingUtilities.invokeAndWait(button::doClick);
    for (int i = 0; i < 600 && !button.isEnabled(); i++) {
      TimeUnit.MILLISECONDS.sleep(50);
    }
    SwingUtilities.invokeAndWait(() -> {});
    assertThat(button.isEnabled()).isTrue();
  }

  private BufferedImage picture() throws Exception {
    BufferedImage image = new BufferedImage(SIZE.width, SIZE.height, BufferedImage.TYPE_INT_RGB);
    SwingUtilities.invokeAndWait(() -> panel.paint(image.getGraphics()));
    return image;
  }

  private static int changed(BufferedImage one, BufferedImage other) {
    int pixels = 0;
    for (int y = 0; y < one.getHeight(); y++) {
      for (int x = 0; x < one.getWidth(); x++) {
        pixels += one.getRGB(x, y) == other.getRGB(x, y) ? 0 : 1;
      }
    }
    return pixels;
  }

  @Test
  void aVisitTypedInIsSavedAndToldAnew() throws Exception {
    BufferedImage before = picture();
    at("visit.date", JTextField.class).setText("2026-04-20");
    at("visit.pip-extension-deficit.passive", JTextField.class).setText("19");
    at("visit.circumference.pip", JTextField.class).setText("67.5");
    at("visit.time", JComboBox.class).setSelectedItem("morning");
    add();

    assertThat(at("weeks.trouble", JTextComponent.class).getText()).isEmpty();
    assertThat(Courses.read(path).course().visits()).hasSize(11);
    assertThat(at("weeks.verdict", JLabel.class).getText()).startsWith("Review the plan");
    assertThat(at("weeks.reasons", JTextComponent.class).getText())
        .startsWith("15° of extension were lost");
    assertThat(at("visit.date", JTextField.class).getText()).isEmpty();
    assertThat(changed(before, picture())).isGreaterThan(2000);
  }

  @Test
  void aWrongVisitIsToldAndChangesNothing() throws Exception {
    byte[] before = Files.readAllBytes(path);
    at("visit.date", JTextField.class).setText("2026-04-06");
    at("visit.pip-extension-deficit.passive", JTextField.class).setText("straight");
    add();

    assertThat(at("weeks.trouble", JTextComponent.class).getText())
        .contains("pip-extension-deficit.passive: straight is not")
        .doesNotContain("visits[");
    assertThat(at("weeks.verdict", JLabel.class).getText()).isEqualTo("Keep the piece.");
    assertThat(at("visit.date", JTextField.class).getText()).isEqualTo("2026-04-06");
    assertThat(Files.readAllBytes(path)).isEqualTo(before);
  }

  /** Each reading the form asks for says what it is, and the panel that it clears nothing. */
  @Test
  void everyFieldSaysWhatItIs() {
    for (String name : new String[] {"visit.date", "visit.skin", "visit.circumference.tip"}) {
      assertThat(at(name, JComponent.class).getToolTipText()).isNotBlank();
    }
    assertThat(panel.getComponents())
        .anyMatch(c -> c instanceof JLabel label && label.getText().contains("does not clear"));
  }
}
