package org.midlateral.viewer.drawing;

import java.awt.Color;

/** Colours that let something through. */
public final class Translucent {
  private Translucent() {}

  /** A colour of which so large a share covers what is under it. */
  public static Color of(Color colour, double opacity) {
    return new Color(
        colour.getRed(), colour.getGreen(), colour.getBlue(), (int) Math.round(255 * opacity));
  }
}
