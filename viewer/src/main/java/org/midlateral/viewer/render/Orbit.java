package org.midlateral.viewer.render;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * From where a scene is seen: in parallel, so that a length measures the same all over the picture.
 *
 * @param target what stands in the middle (mm)
 * @param yaw direction of the eye about z (rad); 0 looks from +x
 * @param pitch height of the eye (rad); pi/2 looks down from +z
 * @param span half of the picture's shorter side (mm)
 */
public record Orbit(Vector3D target, double yaw, double pitch, double span) {
  private static final double LEAST_SPAN = 2;
  private static final double MOST_SPAN = 1000;

  public Orbit {
    pitch = Math.max(-Math.PI / 2, Math.min(Math.PI / 2, pitch));
    span = Math.max(LEAST_SPAN, Math.min(MOST_SPAN, span));
  }

  /** Unit vector from the target to the eye. */
  public Vector3D toEye() {
    return Vector3D.of(
        Math.cos(pitch) * Math.cos(yaw), Math.cos(pitch) * Math.sin(yaw), Math.sin(pitch));
  }

  /** Unit vector that points up in the picture. */
  public Vector3D up() {
    return Vector3D.of(
        -Math.sin(pitch) * Math.cos(yaw), -Math.sin(pitch) * Math.sin(yaw), Math.cos(pitch));
  }

  /** Unit vector that points right in the picture. */
  public Vector3D right() {
    return up().cross(toEye());
  }

  public Orbit turned(double byYaw, double byPitch) {
    return withDirection(yaw + byYaw, pitch + byPitch);
  }

  /** Moved in the picture's own plane (mm). */
  public Orbit panned(double toRight, double toUp) {
    return withTarget(target.add(toRight, right()).add(toUp, up()));
  }

  public Orbit zoomed(double factor) {
    return withSpan(span * factor);
  }

  public Orbit withTarget(Vector3D other) {
    return new Orbit(other, yaw, pitch, span);
  }

  public Orbit withDirection(double otherYaw, double otherPitch) {
    return new Orbit(target, otherYaw, otherPitch, span);
  }

  public Orbit withSpan(double other) {
    return new Orbit(target, yaw, pitch, other);
  }

  /** Size of a pixel (mm) in a picture of some size. */
  public double pixel(int width, int height) {
    return 2 * span / Math.min(width, height);
  }

  /** Where points appear in a picture of some size (px). */
  public Projection projection(int width, int height) {
    return new Projection(target, right(), up(), toEye(), pixel(width, height), width, height);
  }

  /** Where a single point appears in a picture of some size. */
  public Vector3D project(Vector3D point, int width, int height) {
    return projection(width, height).of(point);
  }

  /** The point behind a pixel that lies in the plane through the target (mm). */
  public Vector3D unproject(double x, double y, int width, int height) {
    double pixel = pixel(width, height);
    return target.add((x - width / 2.0) * pixel, right()).add((height / 2.0 - y) * pixel, up());
  }
}
