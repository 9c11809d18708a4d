package org.midlateral.shell;

import java.util.function.DoubleUnaryOperator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.midlateral.cut.Corner;
import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.Design.DorsalShellDesign;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Refusals;

/**
 * Draws the dorsal shell's finished edge in the unrolled plane, girth counted from the dorsal
 * midline: centred on the PIP axis, its flanks a set overlap past the trough's edges.
 */
final class DorsalOutline {
  private static final double STEP = 0.2;

  /** Its flanks stay so far apart on the volar side (mm). Common practice, no source. */
  private static final double APART = 1;

  private DorsalOutline() {}

  /**
   * The outline.
   *
   * @param corner length of the 45 degree cut at each corner (mm)
   * @throws DesignRefused where the shell has no room between web and the trough's distal corners
   */
  static Outline of(DorsalShellDesign design, Outline trough, DigitSurface digit, double corner)
      throws DesignRefused {
    double half = halfLength(design, trough, digit.pipAxis());
    double from = digit.pipAxis() - half;
    double to = digit.pipAxis() + half;
    double share = 1 - trough.wrap();
    DoubleUnaryOperator flank = s -> share / 2 * digit.circumference(s) + design.overlap();
    Corner cut = Corner.cut(Math.min(corner, half / 3));
    requireApart(design, share, digit, from, to);
    CoordinateList distal = new CoordinateList();
    double flankEnd = cut.start(flank, to);
    cut.append(flank, flankEnd, distal);
    // The proximal corner is the distal one of the finger seen the other way.
    DoubleUnaryOperator back = s -> flank.applyAsDouble(-s);
    CoordinateList proximal = new CoordinateList();
    double flankStart = -cut.start(back, -from);
    cut.append(back, -flankStart, proximal);

    CoordinateList right = new CoordinateList();
    right.add(new Coordinate(0, from), false);
    for (int i = proximal.size() - 1; i >= 0; i--) {
      right.add(new Coordinate(proximal.get(i).x, -proximal.get(i).y), false);
    }
    int n = (int) Math.ceil((flankEnd - flankStart) / STEP);
    for (int i = 0; i <= n; i++) {
      double s = flankStart + (flankEnd - flankStart) * i / n;
      right.add(new Coordinate(flank.applyAsDouble(s), s), false);
    }
    right.addAll(distal, false);
    right.add(new Coordinate(0, to), false);
    return new Outline(closed(right), share, from, flankStart, flankEnd, to);
  }

  /** The flanks must not meet one another on the volar side. */
  private static void requireApart(
      DorsalShellDesign design, double share, DigitSurface digit, double from, double to)
      throws DesignRefused {
    double thinnest = Math.min(digit.circumference(from), digit.circumference(to));
    for (double s = from; s < to; s += STEP) {
      thinnest = Math.min(thinnest, digit.circumference(s));
    }
    double most = (1 - share) / 2 * thinnest - APART / 2;
    if (design.overlap() > most) {
      throw new DesignRefused(Refusals.dorsalShellOverlap(design.overlap(), Math.max(0, most)));
    }
  }

  private static Polygon closed(CoordinateList right) {
    CoordinateList ring = new CoordinateList();
    ring.addAll(right, false);
    for (int i = right.size() - 1; i >= 0; i--) {
      Coordinate c = right.get(i);
      ring.add(new Coordinate(c.x == 0 ? 0 : -c.x, c.y), false);
    }
    ring.closeRing();
    return new GeometryFactory().createPolygon(ring.toCoordinateArray());
  }

  private static double halfLength(DorsalShellDesign design, Outline trough, double axis)
      throws DesignRefused {
    double room = Math.min(axis - trough.flankStart(), trough.flankEnd() - axis);
    double wanted = design.length().orElse((trough.distal() - trough.proximal()) / 2) / 2;
    // A length that was asked for is kept or refused; the usual one gives way.
    double half = design.length().isPresent() ? wanted : Math.min(wanted, room);
    if (half > room + 1e-9 || 2 * half < DorsalShell.SHORTEST) {
      throw new DesignRefused(Refusals.dorsalShellLength(2 * half, 2 * room, DorsalShell.SHORTEST));
    }
    return half;
  }
}
