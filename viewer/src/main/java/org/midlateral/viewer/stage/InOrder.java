package org.midlateral.viewer.stage;

import com.jme3.renderer.Camera;
import com.jme3.renderer.queue.GeometryComparator;
import com.jme3.scene.Geometry;

/** See-through surfaces in the order they were dressed in. */
final class InOrder implements GeometryComparator {
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
