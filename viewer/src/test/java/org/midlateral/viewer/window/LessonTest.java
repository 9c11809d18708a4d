package org.midlateral.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Component;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import javax.swing.JTextArea;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.viewer.drawing.Palette;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.view.SceneView;

/** The lesson, stepped through by keys and looked at. */
@ExtendWith(OnDisplay.class)
class LessonTest {
  private WindowDriver driver;

  @BeforeEach
  void openLesson() throws Exception {
    driver = WindowDriver.withSample(Sample.SLIM);
    Rectangle view = driver.place(driver.view());
    driver.click(view.x + 4, view.y + 4);
    driver.until("focus", () -> driver.view().isFocusOwner());
    driver.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_L);
    driver.until("the lesson", () -> driver.window.lesson().isShowing());
    driver.inSwing(
        () -> {
          driver.window.lesson().hold(true);
          return null;
        });
    settle();
  }

  @AfterEach
  void leave() {
    driver.inSwing(
        () -> {
          driver.window.showLesson(false);
          return null;
        });
  }

  private void settle() {
    driver.until("the lesson's picture", () -> driver.window.lesson().isSettled());
  }

  private String text() {
    return driver.inSwing(() -> driver.find(JTextArea.class, "lesson.text").getText());
  }

  private void forward(int steps) {
    for (int i = 0; i < steps; i++) {
      driver.keys(KeyEvent.VK_RIGHT);
      settle();
    }
  }

  private BufferedImage picture() {
    settle();
    return driver.grab(driver.find(Component.class, "lesson.view"));
  }

  @Test
  void keysGoForwardAndBack() {
    assertThat(text()).startsWith("One finger");
    forward(1);
    assertThat(text())
        .startsWith("Shallow, 0.25 of the girth")
        .contains("N·mm")
        .contains("finite elements");
    assertThat(driver.window.lesson().title()).startsWith("demo-little-slim");
    forward(4);
    assertThat(text()).startsWith("Held against the half");
    forward(1);
    assertThat(text()).startsWith("Why: material counts by the square");
    forward(9);
    assertThat(driver.label("lesson.count")).isEqualTo("11 of 11");
    assertThat(text()).startsWith("And the finger?");
    for (int i = 0; i < 6; i++) {
      driver.keys(KeyEvent.VK_LEFT);
    }
    settle();
    assertThat(text()).startsWith("Closed");
  }

  @Test
  void theShallowWrapBendsAndTheHalfHardly() {
    BufferedImage before = picture();
    forward(3);
    assertThat(driver.label("lesson.count")).isEqualTo("4 of 11");
    BufferedImage after = picture();
    // From left to right: 0.25, 0.35, half, closed. Dorsal is to the right.
    assertThat(floor(after, 0.14, 0.33) - floor(before, 0.14, 0.33)).isGreaterThan(15);
    assertThat((double) floor(after, 0.58, 0.77)).isCloseTo(floor(before, 0.58, 0.77), within(6.0));
  }

  /** Where a trough's floor stands at the PIP joint, in a share of the picture's width (px). */
  private static int floor(BufferedImage image, double from, double to) {
    int width = image.getWidth();
    BufferedImage place =
        image.getSubimage(
            (int) (from * width),
            image.getHeight() * 2 / 5,
            (int) ((to - from) * width),
            image.getHeight() / 20);
    return Pixels.bounds(place, Pixels.shadeOf(Palette.LIGHT.trough())).x;
  }

  @Test
  void aStillIsSavedForASlide(@TempDir Path folder) throws Exception {
    forward(5);
    Path file = folder.resolve("still.png");
    driver.press("Save a still");
    driver.press("1920 × 1080");
    driver.choose(file, "Save");
    driver.until("the picture", () -> Files.exists(file) && file.toFile().length() > 5000);
    BufferedImage still = ImageIO.read(file.toFile());
    assertThat(still.getWidth()).isEqualTo(1920);
    assertThat(still.getHeight()).isEqualTo(1080);
    Color shell = Palette.LIGHT.shell();
    assertThat(Pixels.count(still, Pixels.shadeOf(shell))).isGreaterThan(1000);
  }

  /** As large as a large projector, and the first of the numbered frames; then another finger. */
  @Test
  void aLargeStillAndFramesAreSaved(@TempDir Path folder) throws Exception {
    forward(3);
    Path large = folder.resolve("large.png");
    driver.press("Save a still");
    driver.press("3840 × 2160");
    driver.choose(large, "Save");
    driver.until("the picture", () -> isWhole(large));
    BufferedImage still = ImageIO.read(large.toFile());
    assertThat(still.getWidth()).isEqualTo(3840);
    assertThat(still.getHeight()).isEqualTo(2160);
    driver.press("Save frames");
    driver.choose(folder.resolve("film-0001.png"), "Save");
    Path second = folder.resolve("film-0002.png");
    driver.until("the second frame", () -> isWhole(second));
    driver.inSwing(
        () -> {
          driver.window.session().openSample(Sample.COVERED);
          return null;
        });
    driver.until("the end of the frames", () -> driver.hasButton("OK"));
    driver.press("OK");
    BufferedImage first = ImageIO.read(folder.resolve("film-0001.png").toFile());
    assertThat(first.getWidth()).isEqualTo(1920);
    assertThat(first.getHeight()).isEqualTo(1080);
    // At its first frame nothing is loaded yet: more of the load shows in the next.
    assertThat(second).exists();
    settle();
  }

  private static boolean isWhole(Path file) {
    try {
      return Files.exists(file) && ImageIO.read(file.toFile()) != null;
    } catch (IOException e) {
      return false;
    }
  }

  @Test
  void anotherFileEmptiesItAndBeginsOnTheNewFinger() {
    driver.inSwing(
        () -> {
          driver.window.session().openSample(Sample.COVERED);
          assertThat(driver.find(JTextArea.class, "lesson.text").getText())
              .startsWith("Not made yet");
          assertThat(driver.find(SceneView.class, "lesson.view").frame()).isNull();
          return null;
        });
    settle();
    assertThat(driver.window.lesson().title()).startsWith("demo-ring-covered");
    assertThat(text()).startsWith("One finger");
  }
}
