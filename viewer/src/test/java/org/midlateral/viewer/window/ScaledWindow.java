package org.midlateral.viewer.window;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.File;
import javax.imageio.ImageIO;
import org.midlateral.viewer.sample.Sample;

/** A program for a test to start with the screen scaled: says what it sees, and ends. */
public final class ScaledWindow {
  private ScaledWindow() {}

  /**
   * Opens the window, prints sizes, and saves what is on the screen.
   *
   * @param args the file for the picture
   */
  public static void main(String[] args) throws Exception {
    WindowDriver driver = WindowDriver.withSample(Sample.BULBOUS);
    BufferedImage frame = driver.view().frame().image();
    System.out.println("view " + driver.view().getWidth() + " frame " + frame.getWidth());
    Rectangle bounds = driver.window.getBounds();
    ImageIO.write(driver.grab(bounds), "png", new File(args[0]));
    System.out.println("window " + bounds.width + " " + bounds.height);
    Runtime.getRuntime().exit(0);
  }
}
