package org.midlateral.viewer.render;

import java.awt.image.BufferedImage;

/**
 * A picture drawn.
 *
 * @param picture what was asked for
 * @param image its pixels
 * @param millis time it took to draw and to read back (ms)
 */
public record RenderedFrame(PictureRequest picture, BufferedImage image, double millis) {}
