package org.midlateral.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.viewer.render.SurfaceShape;

/**
 * A line on the finger, with its name.
 *
 * @param name to be shown; empty for one that goes without
 * @param kind what it marks
 * @param shape the line
 * @param anchor candidates for the place its name is tied to (mm)
 * @param station along the finger (mm); not a number for one that runs along it
 */
public record Landmark(
    String name, Kind kind, SurfaceShape shape, List<Vector3D> anchor, double station) {
  private static final int AROUND = 48;
  private static final double LIFT = 0.25;
  private static final double THIN = 0.22;
  private static final double THICK = 0.4;

  /** What a landmark marks. */
  public enum Kind {
    /** Where a tape goes round. */
    LEVEL,
    /** A crease or the web. */
    CREASE,
    /** A joint's axis. */
    AXIS,
    /** The mid-lateral lines. */
    MIDLATERAL
  }

  public Landmark {
    anchor = List.copyOf(anchor);
  }

  /** All landmarks of a finger. */
  public static List<Landmark> of(Measurements measured, DigitSurface digit) {
    List<Landmark> marks = new ArrayList<>();
    for (Level level : Level.values()) {
      if (level != Level.WEB && measured.circumference().containsKey(level)) {
        marks.add(ring(name(level), Kind.LEVEL, digit, measured.stationOf(level), Math.PI));
      }
    }
    marks.add(ring("Web", Kind.CREASE, digit, 0, Math.PI));
    double crease = -measured.palmarCreaseToWeb();
    marks.add(ring("Palmar crease", Kind.CREASE, digit, crease, Math.PI / 2));
    for (double fold :
        new double[] {measured.webToPip(), measured.webToPip() + measured.pipToDip()}) {
      marks.add(ring("", Kind.CREASE, digit, fold, Math.PI / 3));
    }
    marks.add(axis(digit));
    marks.add(midlateral(digit, 1));
    marks.add(midlateral(digit, -1));
    return marks;
  }

  private static String name(Level level) {
    return switch (level) {
      case WEB -> "Web";
      case PROXIMAL_PHALANX -> "Proximal phalanx";
      case PIP -> "PIP tape";
      case MIDDLE_PHALANX -> "Middle phalanx";
      case DIP -> "DIP tape";
      case TIP -> "Tip";
    };
  }

  /** A ring on the skin, to an angle on either side of the volar midline. */
  private static Landmark ring(
      String name, Kind kind, DigitSurface digit, double station, double reach) {
    Slice slice = digit.slice(station);
    boolean closed = reach > 3.1;
    List<Vector3D> path = new ArrayList<>();
    for (int i = 0; i < AROUND; i++) {
      double share = closed ? i / (double) AROUND : i / (AROUND - 1.0);
      path.add(lifted(slice, digit, -reach + 2 * reach * share));
    }
    double radius = kind == Kind.CREASE ? THICK : THIN;
    SurfaceShape line = SurfaceShape.of(Tube.along(path, closed, radius));
    return new Landmark(name, kind, line, path, station);
  }

  private static Vector3D lifted(Slice slice, DigitSurface digit, double t) {
    Vector3D skin = slice.point(t);
    Vector3D out = skin.subtract(digit.centre(slice.station())).normalize();
    return skin.add(LIFT, out);
  }

  private static Landmark axis(DigitSurface digit) {
    double reach = digit.slice(digit.pipAxis()).halfWidth() + 9;
    Vector3D centre = digit.centre(digit.pipAxis());
    Vector3D one = centre.add(reach, Vector3D.Unit.PLUS_Y);
    Vector3D other = centre.add(-reach, Vector3D.Unit.PLUS_Y);
    List<Vector3D> path = List.of(one, centre, other);
    return new Landmark(
        "PIP axis",
        Kind.AXIS,
        SurfaceShape.of(Tube.along(path, false, THICK)),
        List.of(one, other),
        digit.pipAxis());
  }

  private static Landmark midlateral(DigitSurface digit, int side) {
    List<Vector3D> path = new ArrayList<>();
    for (double s = 0; s < digit.tip(); s += 1) {
      Slice slice = digit.slice(s);
      path.add(lifted(slice, digit, slice.angle(side * slice.circumference() / 4)));
    }
    Vector3D last = path.get(path.size() - 1);
    String name = side > 0 ? "Mid-lateral line" : "";
    return new Landmark(
        name,
        Kind.MIDLATERAL,
        SurfaceShape.of(Tube.along(path, false, THIN)),
        List.of(last),
        Double.NaN);
  }
}
