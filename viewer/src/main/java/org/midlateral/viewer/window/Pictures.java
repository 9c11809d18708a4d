package org.midlateral.viewer.window;

import java.awt.Component;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** Pictures as files. */
final class Pictures {
  private Pictures() {}

  /** Writes a picture as PNG and says where that fails. */
  static boolean write(Component parent, BufferedImage image, Path path) {
    try {
      if (ImageIO.write(image, "png", path.toFile())) {
        return true;
      }
    } catch (IOException e) {
      Notices.trouble(parent, path + " cannot be written.");
      return false;
    }
    Notices.trouble(parent, path + " cannot be written as PNG.");
    return false;
  }
}
