package org.midlateral.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Component;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import javax.swing.JTextArea;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.view.Palette;

/** The lesson, stepped through by keys and looked at. */
@ExtendWith(OnDisplay.class)
class LessonTest {
  private Desk desk;

  @BeforeEach
  void teach() throws Exception {
    desk = Desk.withSample(Sample.SLIM);
    desk.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_L);
    desk.inSwing(
        () -> {
          desk.window.lesson().hold(true);
          return null;
        });
    settle();
  }

  @AfterEach
  void leave() {
    desk.inSwing(
        () -> {
          desk.window.teach(false);
          return null;
        });
  }

  private void settle() {
    desk.until("the lesson's picture", () -> desk.window.lesson().isSettled());
  }

  private String text() {
    return desk.inSwing(() -> desk.find(JTextArea.class, "lesson.text").getText());
  }

  private void forward(int steps) {
    for (int i = 0; i < steps; i++) {
      desk.keys(KeyEvent.VK_RIGHT);
      settle();
    }
  }

  private BufferedImage picture() {
    settle();
    return desk.grab(desk.find(Component.class, "lesson.view"));
  }

  @Test
  void keysGoForwardAndBack() {
    assertThat(text()).startsWith("One finger");
    forward(1);
    assertThat(text()).startsWith("Shallow, wrap 0.25").contains("N·mm").contains("°");
    forward(9);
    assertThat(desk.label("lesson.count")).isEqualTo("6 of 6");
    desk.keys(KeyEvent.VK_LEFT);
    settle();
    assertThat(text()).startsWith("Closed");
  }

  @Test
  void theShallowWrapBendsAndTheHalfHardly() {
    BufferedImage before = picture();
    forward(3);
    BufferedImage after = picture();
    int quarter = before.getWidth() / 4;
    Rectangle shallowBefore = trough(before, 0, quarter);
    Rectangle shallowAfter = trough(after, 0, quarter);
    assertThat(shallowBefore.width).isGreaterThan(20);
    assertThat(shallowAfter.width - shallowBefore.width).isGreaterThan(15);
    Rectangle halfBefore = trough(before, 2 * quarter, quarter);
    Rectangle halfAfter = trough(after, 2 * quarter, quarter);
    assertThat((double) halfAfter.width).isCloseTo(halfBefore.width, within(8.0));
  }

  private static Rectangle trough(BufferedImage image, int from, int width) {
    BufferedImage column = image.getSubimage(from, 0, width, image.getHeight() - 100);
    return Pixels.bounds(column, Pixels.shadeOf(Palette.LIGHT.trough()));
  }

  @Test
  void aStillIsSavedForASlide(@TempDir Path folder) throws Exception {
    forward(5);
    Path file = folder.resolve("still.png");
    desk.press("Save a still");
    desk.until("the dialog", () -> desk.hasButton("Save"));
    desk.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
    desk.type(file.toString());
    desk.keys(KeyEvent.VK_ENTER);
    desk.until("the picture", () -> Files.exists(file) && file.toFile().length() > 5000);
    BufferedImage still = ImageIO.read(file.toFile());
    assertThat(still.getWidth()).isEqualTo(desk.find(Component.class, "lesson.view").getWidth());
    Color shell = Palette.LIGHT.shell();
    assertThat(Pixels.count(still, Pixels.shadeOf(shell))).isGreaterThan(1000);
  }
}
