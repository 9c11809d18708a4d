package org.midlateral.document.picture;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * The eye that a picture is drawn for: far away, so that parallel lines stay parallel.
 *
 * @param right unit vector that points right in the picture
 * @param up unit vector that points up in the picture
 * @param toward unit vector that points out of the picture, at the eye
 */
public record Viewpoint(Vector3D right, Vector3D up, Vector3D toward) {
  /**
   * The view from a direction.
   *
   * @param from where the eye is, seen from the thing; any length
   * @param up what should point up; must not be along {@code from}
   */
  public static Viewpoint from(Vector3D from, Vector3D up) {
    Vector3D toward = from.normalize();
    Vector3D right = up.cross(toward).normalize();
    return new Viewpoint(right, toward.cross(right), toward);
  }
}
