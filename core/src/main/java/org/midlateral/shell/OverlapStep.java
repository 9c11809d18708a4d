package org.midlateral.shell;

import org.midlateral.digit.DigitSurface;
import org.midlateral.piece.GapField;

/**
 * Gap of the dorsal shell: its own clearance over the dorsum, and a fit gap over the outside of the
 * trough where the two overlap, with a smooth step between the two just dorsal of the trough's
 * edge.
 *
 * @param digit the skin
 * @param wrap share of the circumference between the trough's finished edges
 * @param own gap over the dorsum, reliefs included
 * @param trough gap of the trough
 * @param onTop wall of the trough and fit gap together (mm)
 * @param rim the step keeps this far dorsal of the trough's edge (mm)
 * @param width over which it rises (mm)
 */
record OverlapStep(
    DigitSurface digit,
    double wrap,
    GapField own,
    GapField trough,
    double onTop,
    double rim,
    double width)
    implements GapField {
  private static final double STEP = 1e-5;

  /** Width over height of a step of nearly 45 degrees. */
  private static final double STEEPEST = 2.05;

  /** The outside of the step's foot bends in with this radius at least (mm). */
  private static final double FOOT = 1.3;

  /** Of the skin's mean curvature so much is left where a section is flattest beside the joint. */
  private static final double ROUND = 0.7;

  @Override
  public void jet(double girth, double station, double[] jet) {
    double past = past(girth, station);
    if (isFree(past)) {
      own.jet(girth, station, jet);
      return;
    }
    trough.jet(girth, station, jet);
    if (jet[1] == 0 && jet[2] == 0) {
      overLevelTrough(girth, station, past, jet);
    } else {
      overSlopingTrough(girth, station, jet);
    }
  }

  /** Without the slopes, which over a sloping trough take four times as long. */
  @Override
  public double at(double girth, double station) {
    return isFree(past(girth, station))
        ? own.at(girth, station)
        : gap(girth, station, new double[3]);
  }

  /** Whether a place lies dorsal of the step. */
  private boolean isFree(double past) {
    return past < -rim - width - 2 * STEP;
  }

  /** Where the trough's gap is level its wall is as thick as it is: everything in closed form. */
  private void overLevelTrough(double girth, double station, double past, double[] jet) {
    double top = jet[0] + onTop;
    double beyond = (past + rim) / width;
    double rise = rise(beyond);
    if (rise == 1) {
      jet[0] = top;
      return;
    }
    own.jet(girth, station, jet);
    double u = Math.max(0, Math.min(1, 1 + beyond));
    double slope = (u < 0.5 ? 4 * u : 4 * (1 - u)) / width * (top - jet[0]);
    jet[0] += rise * (top - jet[0]);
    jet[1] = (1 - rise) * jet[1] - slope * Math.signum(girth);
    jet[2] = (1 - rise) * jet[2] + slope * wrap / 2 * digit.circumferenceByStation(station);
  }

  private void overSlopingTrough(double girth, double station, double[] jet) {
    double[] scratch = new double[3];
    jet[0] = gap(girth, station, scratch);
    jet[1] =
        (gap(girth + STEP, station, scratch) - gap(girth - STEP, station, scratch)) / (2 * STEP);
    jet[2] =
        (gap(girth, station + STEP, scratch) - gap(girth, station - STEP, scratch)) / (2 * STEP);
  }

  @Override
  public boolean uniformAt(double station) {
    return false;
  }

  /** Girth distance past the trough's edge, volarward (mm). */
  private double past(double girth, double station) {
    return wrap / 2 * digit.circumference(station) - Math.abs(girth);
  }

  private double gap(double girth, double station, double[] scratch) {
    double rise = rise((past(girth, station) + rim) / width);
    double gap = 0;
    if (rise < 1) {
      own.jet(girth, station, scratch);
      gap += (1 - rise) * scratch[0];
    }
    if (rise > 0) {
      trough.jet(girth, station, scratch);
      // A sloping wall is thicker along the skin's normal than along its own. What slopes along the
      // finger is left to the bridge, which knows how the skin bends there.
      gap += rise * (scratch[0] + onTop * Math.sqrt(1 + scratch[1] * scratch[1]));
    }
    return gap;
  }

  /** Two parabolas: 0 up to one width before the top, 1 from there on. */
  private static double rise(double beyondTop) {
    double u = Math.max(0, Math.min(1, 1 + beyondTop));
    return u < 0.5 ? 2 * u * u : 1 - 2 * (1 - u) * (1 - u);
  }

  /**
   * The usual width: no steeper than 45 degrees, and bending in at its foot with a radius of more
   * than twice the wall.
   *
   * @param height of the step (mm)
   * @param wall of the shell (mm)
   */
  static double width(double height, double wall) {
    // Steepest slope 2 h/w; least radius of the foot w²/4h.
    return Math.max(STEEPEST * height, Math.sqrt(4 * height * 2.2 * wall));
  }

  /**
   * The highest step that fits a width: no steeper than 45 degrees, its foot bending in no more
   * than the wall can follow. The skin's own roundness takes up a part of that bend.
   *
   * @param width (mm)
   * @param wall of the shell (mm)
   * @param radius of the section that the step lies on (mm)
   */
  static double height(double width, double wall, double radius) {
    double bend = 1 / (wall + FOOT) + ROUND / radius;
    return Math.min(width / STEEPEST, width * width * bend / 4);
  }
}
