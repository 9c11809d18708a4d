package org.midlateral.viewer.stage;

import java.awt.Color;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * One shape in a picture.
 *
 * @param name for whoever points at it
 * @param shape its surface
 * @param look how it is drawn
 * @param place how far it is moved (mm)
 * @param motion displacement of each vertex, or null where it rests
 * @param amount what the motion is multiplied by
 */
public record Actor(
    String name, SurfaceShape shape, Look look, Vector3D place, Motion motion, double amount) {

  /**
   * How a shape is drawn.
   *
   * @param tint its colour where it has no paint
   * @param paint a colour at each vertex, or null
   * @param opacity 1 where nothing shines through
   * @param lit whether light and shade fall on it
   */
  public record Look(Color tint, VertexPaint paint, double opacity, boolean lit) {
    /** Opaque and lit, of one colour. */
    public static Look of(Color tint) {
      return new Look(tint, null, 1, true);
    }

    public Look withPaint(VertexPaint other) {
      return new Look(tint, other, opacity, lit);
    }

    public Look withOpacity(double other) {
      return new Look(tint, paint, other, lit);
    }
  }

  /** A colour at each vertex. Compared by identity; never changed. */
  public static final class VertexPaint {
    final float[] rgba;

    /**
     * Paints.
     *
     * @param colours one 0xRRGGBB a vertex
     */
    public VertexPaint(int[] colours) {
      rgba = new float[4 * colours.length];
      for (int i = 0; i < colours.length; i++) {
        rgba[4 * i] = (colours[i] >> 16 & 255) / 255f;
        rgba[4 * i + 1] = (colours[i] >> 8 & 255) / 255f;
        rgba[4 * i + 2] = (colours[i] & 255) / 255f;
        rgba[4 * i + 3] = 1;
      }
    }
  }

  /** A displacement at each vertex. Compared by identity; never changed. */
  public static final class Motion {
    final float[] xyz;

    /**
     * Takes a copy.
     *
     * @param xyz n by 3, row-major (mm)
     */
    public Motion(float[] xyz) {
      this.xyz = xyz.clone();
    }
  }

  /** A shape where it is. */
  public static Actor of(String name, SurfaceShape shape, Look look) {
    return new Actor(name, shape, look, Vector3D.ZERO, null, 0);
  }

  public Actor at(Vector3D other) {
    return new Actor(name, shape, look, other, motion, amount);
  }

  public Actor moving(Motion other, double times) {
    return new Actor(name, shape, look, place, other, times);
  }
}
