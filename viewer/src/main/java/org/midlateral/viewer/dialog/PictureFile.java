package org.midlateral.viewer.dialog;

import java.awt.Component;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** Pictures as files. */
public final class PictureFile {
  private PictureFile() {}

  /** Writes a picture as PNG and says where that fails. */
  public static boolean write(Component parent, BufferedImage image, Path path) {
    try {
      if (ImageIO.write(image, "png", path.toFile())) {
        return true;
      }
    } catch (IOException e) {
      MessageDialogs.trouble(parent, path + " cannot be written.");
      return false;
    }
    MessageDialogs.trouble(parent, path + " cannot be written as PNG.");
    return false;
  }
}
