package org.midlateral.viewer.render;

import java.awt.Color;
import java.util.List;

/**
 * All that is in one frame.
 *
 * @param items in the order in which see-through ones are drawn
 * @param orbit from where
 * @param width px
 * @param height px
 * @param background behind it all
 * @param smooth whether edges are smoothed, which takes longer
 */
public record PictureRequest(
    List<SceneItem> items, Orbit orbit, int width, int height, Color background, boolean smooth) {
  public PictureRequest {
    items = List.copyOf(items);
  }
}
