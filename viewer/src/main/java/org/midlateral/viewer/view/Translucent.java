package org.midlateral.viewer.view;

import java.awt.Color;

/** Colours that let something through. */
final class Translucent {
  private Translucent() {}

  static Color of(Color colour, double opacity) {
    return new Color(
        colour.getRed(), colour.getGreen(), colour.getBlue(), (int) Math.round(255 * opacity));
  }
}
