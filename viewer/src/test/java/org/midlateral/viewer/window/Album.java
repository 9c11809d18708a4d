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
final class Album {
  private final Desk desk;
  private final Path folder;
  private final String name;

  private Album(Desk desk, Path folder, String name) {
    this.desk = desk;
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
      Desk desk = Desk.withSample(Sample.BULBOUS);
      desk.inSwing(
          () -> {
            desk.window.wear(dark);
            return null;
          });
      new Album(desk, Path.of(args[0]), dark ? "dark" : "light").all();
    }
    Runtime.getRuntime().exit(0);
  }

  private void all() throws Exception {
    Thread.sleep(6000);
    take("1-start");
    look(ViewSide.VOLAR);
    take("2-volar");
    look(ViewSide.RADIAL);
    desk.pull(14);
    desk.show("finger", PartVisibility.SEE_THROUGH);
    take("3-apart");
    desk.pull(0);
    desk.show("finger", PartVisibility.SHOWN);
    for (Quantity quantity : Quantity.values()) {
      desk.colour(quantity);
      look(quantity == Quantity.WALL ? ViewSide.VOLAR : ViewSide.ULNAR);
      Rectangle view = desk.place(desk.view());
      desk.moveTo((int) view.getCenterX(), (int) view.getCenterY() + 20);
      desk.settle();
      take("4-" + Desk.lower(quantity));
    }
    desk.colour(Quantity.NONE);
    desk.fill("trough.wall", "9");
    desk.fill("circumference.tip", "70");
    Thread.sleep(500);
    take("5-refused");
    Desk.withSample(Sample.INCHES);
    desk.fill("relief.height", "1/16");
    Thread.sleep(500);
    take("6-inches");
    Desk.withSample(Sample.DEFICIT);
    look(ViewSide.ULNAR);
    take("7-deficit");
    lesson();
  }

  private void lesson() throws Exception {
    Desk.withSample(Sample.SLIM);
    desk.inSwing(
        () -> {
          desk.window.teach(true);
          desk.window.lesson().hold(true);
          return null;
        });
    for (int step = 0; step < 6; step++) {
      desk.until("the lesson's picture", () -> desk.window.lesson().isSettled());
      take("8-lesson-" + step);
      desk.keys(KeyEvent.VK_RIGHT);
    }
    desk.inSwing(
        () -> {
          desk.window.teach(false);
          return null;
        });
    desk.keys(KeyEvent.VK_F1);
    Thread.sleep(500);
    take("9-keys");
    desk.press("OK");
  }

  private void look(ViewSide side) {
    desk.inSwing(
        () -> {
          desk.view().lookFrom(side);
          return null;
        });
    desk.settle();
  }

  private void take(String mode) throws IOException {
    BufferedImage image = desk.grab(desk.window.getBounds());
    ImageIO.write(image, "png", folder.resolve(name + "-" + mode + ".png").toFile());
  }
}
