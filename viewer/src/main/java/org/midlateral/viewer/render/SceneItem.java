package org.midlateral.viewer.render;

import java.awt.Color;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * One shape in a picture.
 *
 * @param name for whoever points at it
 * @param shape its surface
 * @param look how it is drawn
 * @param place how far it is moved (mm)
 * @param displacements of its vertices, or null where it rests
 * @param amount what the displacements are multiplied by
 */
public record SceneItem(
    String name,
    SurfaceShape shape,
    Look look,
    Vector3D place,
    VertexDisplacements displacements,
    double amount) {

  /**
   * How a shape is drawn.
   *
   * @param tint its colour where its vertices have none
   * @param colours of its vertices, or null
   * @param opacity 1 where nothing shines through
   * @param lit whether light and shade fall on it
   */
  public record Look(Color tint, VertexColours colours, double opacity, boolean lit) {
    /** Opaque and lit, of one colour. */
    public static Look of(Color tint) {
      return new Look(tint, null, 1, true);
    }

    public Look withColours(VertexColours other) {
      return new Look(tint, other, opacity, lit);
    }

    public Look withOpacity(double other) {
      return new Look(tint, colours, other, lit);
    }
  }

  /** A colour at each vertex. Compared by identity; never changed. */
  public static final class VertexColours {
    final float[] rgba;

    /**
     * Takes colours.
     *
     * @param colours one 0xRRGGBB a vertex
     */
    public VertexColours(int[] colours) {
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
  public static final class VertexDisplacements {
    final float[] xyz;

    /**
     * Takes a copy.
     *
     * @param xyz n by 3, row-major (mm)
     */
    public VertexDisplacements(float[] xyz) {
      this.xyz = xyz.clone();
    }
  }

  /** A shape where it is, at rest. */
  public static SceneItem of(String name, SurfaceShape shape, Look look) {
    return new SceneItem(name, shape, look, Vector3D.ZERO, null, 0);
  }

  public SceneItem withOpacity(double other) {
    return new SceneItem(name, shape, look.withOpacity(other), place, displacements, amount);
  }

  public SceneItem at(Vector3D other) {
    return new SceneItem(name, shape, look, other, displacements, amount);
  }

  public SceneItem displaced(VertexDisplacements other, double times) {
    return new SceneItem(name, shape, look, place, other, times);
  }
}
