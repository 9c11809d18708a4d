package org.midlateral.viewer.window;

import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.view.PartVisibility;
import org.midlateral.viewer.view.ViewSide;

/** Pictures of the window in every mode, light and dark, for people to judge; a program. */
final class WindowPictures {
  private final WindowDriver driver;
  private final Path folder;
  private final String name;

  private WindowPictures(WindowDriver driver, Path folder, String name) {
    this.driver = driver;
    this.folder = folder;
    this.name = name;
  }

  /**
   * Draws them all.
   *
   * @param args the folder for them
   */
  public static void main(String[] args) throws Exception {
    for (boolean dark : new boolean[] {false, true}) {
      WindowDriver driver = WindowDriver.withSample(Sample.BULBOUS);
      driver.inSwing(
          () -> {
            driver.window.setDark(dark);
            return null;
          });
      new WindowPictures(driver, Path.of(args[0]), dark ? "dark" : "light").all();
    }
    Runtime.getRuntime().exit(0);
  }

  private void all() throws Exception {
    Thread.sleep(6000);
    take("1-start");
    look(ViewSide.VOLAR);
    take("2-volar");
    look(ViewSide.RADIAL);
    driver.pull(14);
    driver.show("finger", PartVisibility.SEE_THROUGH);
    take("3-apart");
    driver.pull(0);
    driver.show("finger", PartVisibility.SHOWN);
    for (Quantity quantity : Quantity.values()) {
      driver.colour(quantity);
      look(quantity == Quantity.WALL ? ViewSide.VOLAR : ViewSide.ULNAR);
      Rectangle view = driver.place(driver.view());
      driver.moveTo((int) view.getCenterX(), (int) view.getCenterY() + 20);
      driver.settle();
      take("4-" + WindowDriver.lower(quantity));
    }
    driver.colour(Quantity.NONE);
    driver.fill("trough.wall", "9");
    driver.fill("circumference.tip", "70");
    Thread.sleep(500);
    take("5-refused");
    WindowDriver.withSample(Sample.INCHES);
    driver.fill("relief.height", "1/16");
    Thread.sleep(500);
    take("6-inches");
    WindowDriver.withSample(Sample.DEFICIT);
    look(ViewSide.ULNAR);
    take("7-deficit");
    lesson();
  }

  private void lesson() throws Exception {
    WindowDriver.withSample(Sample.SLIM);
    driver.inSwing(
        () -> {
          driver.window.showLesson(true);
          driver.window.lesson().hold(true);
          return null;
        });
    for (int step = 0; step < 11; step++) {
      driver.until("the lesson's picture", () -> driver.window.lesson().isSettled());
      take("8-lesson-" + step);
      driver.keys(KeyEvent.VK_RIGHT);
    }
    driver.inSwing(
        () -> {
          driver.window.showLesson(false);
          return null;
        });
    driver.keys(KeyEvent.VK_F1);
    Thread.sleep(500);
    take("9-keys");
    driver.press("OK");
  }

  private void look(ViewSide side) {
    driver.inSwing(
        () -> {
          driver.view().lookFrom(side);
          return null;
        });
    driver.settle();
  }

  private void take(String mode) throws IOException {
    BufferedImage image = driver.grab(driver.window.getBounds());
    ImageIO.write(image, "png", folder.resolve(name + "-" + mode + ".png").toFile());
  }
}
