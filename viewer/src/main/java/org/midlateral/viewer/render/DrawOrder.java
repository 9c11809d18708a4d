package org.midlateral.viewer.render;

import com.jme3.renderer.Camera;
import com.jme3.renderer.queue.GeometryComparator;
import com.jme3.scene.Geometry;

/** See-through surfaces are drawn in the order they stand in a picture. */
final class DrawOrder implements GeometryComparator {
  static final String RANK = "rank";

  @Override
  public int compare(Geometry a, Geometry b) {
    return Integer.compare(rank(a), rank(b));
  }

  private static int rank(Geometry geometry) {
    Integer rank = geometry.getUserData(RANK);
    return rank == null ? 0 : rank;
  }

  @Override
  public void setCamera(Camera camera) {
    // The order does not depend on where they are seen from.
  }
}
