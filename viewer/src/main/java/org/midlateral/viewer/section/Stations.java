package org.midlateral.viewer.section;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;
import org.midlateral.mechanics.SectionPlane;
import org.midlateral.viewer.render.SurfaceShape;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.Tube;

/** Stations along the finger: which are shown, and which one a point is at. */
public final class Stations {
  private static final double STEP = 0.5;
  private static final double HOOP = 0.3;
  private static final double CLEAR = 5;
  private static final int AROUND = 60;

  private Stations() {}

  /** The most proximal station that is looked at (mm): where the trough begins. */
  public static double first(DesignShapes design) {
    Outline outline = design.orthosis().trough().piece().outline();
    return Math.ceil(outline.proximal() * 2) / 2;
  }

  /** The most distal one (mm). */
  public static double last(DesignShapes design) {
    double end = design.orthosis().digit().pulpEnd();
    return Math.floor((end - STEP) * 2) / 2;
  }

  /** The station whose plane is nearest to a point (mm). */
  public static double nearest(DigitSurface digit, Vector3D point) {
    double best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (double s = -60; s < digit.pulpEnd(); s += STEP) {
      double distance = digit.centre(s).distance(point);
      if (distance < least) {
        least = distance;
        best = s;
      }
    }
    double off = point.subtract(digit.centre(best)).dot(digit.tangent(best));
    return Math.min(best + Math.max(-STEP, Math.min(STEP, off)), digit.pulpEnd());
  }

  /** A hoop that stands about finger and pieces at a station. */
  public static SurfaceShape hoop(DesignShapes design, double station) {
    return SurfaceShape.of(Tube.along(hoopPath(design, station), true, HOOP));
  }

  /** The line that the hoop runs along, closed (mm). */
  public static List<Vector3D> hoopPath(DesignShapes design, double station) {
    DigitSurface digit = design.orthosis().digit();
    double at = Math.min(station, last(design));
    SectionPlane plane = SectionPlane.at(digit, at);
    double y = digit.slice(at).halfWidth() + CLEAR;
    double z = digit.slice(at).halfDepth() + CLEAR;
    List<Vector3D> path = new ArrayList<>();
    for (int i = 0; i < AROUND; i++) {
      double t = 2 * Math.PI * i / AROUND;
      path.add(
          plane
              .origin()
              .add(y * Math.sin(t), Vector3D.Unit.PLUS_Y)
              .add(-z * Math.cos(t), plane.dorsal()));
    }
    return path;
  }
}
