package org.midlateral.cut;

import java.util.function.DoubleUnaryOperator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.geom.GeometryFactory;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.Design.DistalEnd;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Refusals;

/**
 * Draws the trough's finished edge in the unrolled plane: tongue, two flanks at the trim height,
 * and an open or a covered distal end.
 */
public final class MidlateralCut {
  /** Spacing of the outline's points (mm): a 1.5 mm arc is met within 0.004 mm. */
  private static final double STEP = 0.2;

  /** Share of the corner's own length that must be left of the straight end line on each side. */
  private static final double LEAST_END = 0.5;

  private final TroughDesign design;
  private final DigitSurface digit;
  private final double web;
  private final double apex;

  private MidlateralCut(TroughDesign design, DigitSurface digit, double web, double apex) {
    this.design = design;
    this.digit = digit;
    this.web = web;
    this.apex = apex;
  }

  /**
   * The trough's outline.
   *
   * @throws DesignRefused where the tongue or the distal end has no room
   */
  public static Outline of(Measurements measurements, TroughDesign design, DigitSurface digit)
      throws DesignRefused {
    double web = design.webClearance();
    double apex = -measurements.palmarCreaseToWeb() + design.proximalMargin();
    MidlateralCut cut = new MidlateralCut(design, digit, web, apex);
    cut.requireRoom();
    return cut.draw();
  }

  /** Half-girth of the flank at a station (mm). */
  private double flank(double station) {
    double wrap = design.wrap();
    double past = (station - digit.tip()) / (digit.pulpEnd() - digit.tip());
    if (design.distal() == DistalEnd.COVERED && past > 0) {
      // Over the pulp the edge rises, or falls, to the mid-lateral line: anything else would leave
      // a point where the two flanks meet.
      double u = Math.min(1, past);
      wrap += (0.5 - wrap) * u * u * (3 - 2 * u);
    }
    return wrap / 2 * digit.circumference(station);
  }

  private void requireRoom() throws DesignRefused {
    double length = web - apex;
    double half = flank(web);
    double blunt = length > 0 ? length * length / half : 0;
    if (blunt < Corner.LEAST_RADIUS) {
      throw new DesignRefused(Refusals.tongueShort(length, 2 * half, blunt, Corner.LEAST_RADIUS));
    }
  }

  private Outline draw() throws DesignRefused {
    CoordinateList right = new CoordinateList();
    double length = web - apex;
    int n = (int) Math.ceil(Math.hypot(flank(web), length) * 1.2 / STEP);
    for (int i = 0; i <= n; i++) {
      double turn = Math.PI / 2 * i / n;
      double s = web - length * Math.cos(turn);
      right.add(new Coordinate(flank(s) * Math.sin(turn), s), false);
    }
    double flankEnd = design.distal() == DistalEnd.COVERED ? coveredEnd(right) : openEnd(right);
    CoordinateList ring = new CoordinateList();
    ring.addAll(right, false);
    for (int i = right.size() - 1; i >= 0; i--) {
      Coordinate c = right.get(i);
      ring.add(new Coordinate(c.x == 0 ? 0 : -c.x, c.y), false);
    }
    ring.closeRing();
    double distal = right.get(right.size() - 1).y;
    return new Outline(
        new GeometryFactory().createPolygon(ring.toCoordinateArray()),
        design.wrap(),
        apex,
        web,
        flankEnd,
        distal);
  }

  private void appendFlank(double to, CoordinateList path) {
    int n = (int) Math.ceil((to - web) / STEP);
    for (int i = 1; i <= n; i++) {
      double s = web + (to - web) * i / n;
      path.add(new Coordinate(flank(s), s), false);
    }
  }

  private double openEnd(CoordinateList path) throws DesignRefused {
    double end = digit.pulpEnd() - design.distalMargin();
    DoubleUnaryOperator flank = this::flank;
    for (double length = design.corner(); ; length *= 0.9) {
      Corner corner = Corner.cut(length);
      double start = corner.start(flank, end);
      CoordinateList bend = new CoordinateList();
      double left = corner.append(flank, start, bend);
      if (start > web && left >= LEAST_END * length) {
        appendFlank(start, path);
        path.addAll(bend, false);
        path.add(new Coordinate(0, end), false);
        return start;
      }
      if (1.5 * length < Corner.LEAST_RADIUS) {
        throw new DesignRefused(
            Refusals.distalEndNarrow(design.distalMargin(), Corner.LEAST_RADIUS));
      }
    }
  }

  private double coveredEnd(CoordinateList path) {
    appendFlank(digit.tip(), path);
    double length = digit.pulpEnd() - digit.tip();
    int n = (int) Math.ceil(2 * (length + flank(digit.tip())) / STEP);
    for (int i = 1; i < n; i++) {
      double s = digit.tip() + length * Math.sin(Math.PI / 2 * i / n);
      path.add(new Coordinate(flank(s), s), false);
    }
    path.add(new Coordinate(0, digit.pulpEnd()), false);
    return digit.tip();
  }
}
