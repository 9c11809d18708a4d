package org.midlateral.viewer.window;

import java.awt.Color;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.function.IntPredicate;

/** Measures regions of a screen shot. */
final class Pixels {
  private Pixels() {}

  /** Pixels whose colour passes. */
  static int count(BufferedImage image, IntPredicate test) {
    int count = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        count += test.test(image.getRGB(x, y) & 0xFFFFFF) ? 1 : 0;
      }
    }
    return count;
  }

  /** The smallest rectangle around all pixels that pass. */
  static Rectangle bounds(BufferedImage image, IntPredicate test) {
    Rectangle bounds = null;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        if (test.test(image.getRGB(x, y) & 0xFFFFFF)) {
          Rectangle pixel = new Rectangle(x, y, 1, 1);
          bounds = bounds == null ? pixel : bounds.union(pixel);
        }
      }
    }
    return bounds;
  }

  /** Whether a colour is a shade of another: the same hue, fairly strong. */
  static IntPredicate shadeOf(Color colour) {
    float[] wanted = Color.RGBtoHSB(colour.getRed(), colour.getGreen(), colour.getBlue(), null);
    return rgb -> {
      float[] hsb = Color.RGBtoHSB(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255, null);
      double apart = Math.abs(hsb[0] - wanted[0]);
      return Math.min(apart, 1 - apart) < 0.035 && hsb[1] > wanted[1] * 0.6 && hsb[2] > 0.12;
    };
  }

  /** Largest difference of two colours in a channel. */
  static int apart(int a, int b) {
    int most = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      most = Math.max(most, Math.abs((a >> shift & 255) - (b >> shift & 255)));
    }
    return most;
  }
}
