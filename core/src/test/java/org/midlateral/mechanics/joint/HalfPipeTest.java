package org.midlateral.mechanics.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.midlateral.Fingers;
import org.midlateral.RoundFinger;
import org.midlateral.cut.Outline;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.HoldingDesign;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.Joining;
import org.midlateral.piece.GapField;
import org.midlateral.piece.Midline;
import org.midlateral.piece.Piece;

/**
 * A rigid cylinder under an elastic layer in a rigid half pipe that is wider by a gap, wrapped. By
 * the theory of the elastic foundation (K. L. Johnson, Contact Mechanics, 1985, section 4.3) the
 * pressure is p = (E/h) (d cos t - g) at an angle t from the bottom, d being how far the cylinder
 * is pressed down; it ends where d cos t = g, and carries
 *
 * <pre>P = (E/h) R (d (c + sin c cos c) - 2 g sin c) per length, cos c = g/d.</pre>
 */
class HalfPipeTest {
  private static final double RADIUS = 8;
  private static final double GAP = 0.3;
  private static final double FROM = 4;
  private static final double LENGTH = 26;
  private static final double KILOPASCAL = 30;
  private static final double THICKNESS = 0.5;

  /** Pressure per squeeze (MPa/mm). */
  private static final double FOUNDATION = 0.001 * KILOPASCAL / (THICKNESS * RADIUS);

  private static FingerInPieces pipe() {
    Measurements round = RoundFinger.of(RADIUS, 20, 40, 30, 30);
    double half = Math.PI * RADIUS / 2;
    double corner = 1.5;
    Coordinate[] inside = {
      new Coordinate(-half + corner, FROM + corner),
      new Coordinate(half - corner, FROM + corner),
      new Coordinate(half - corner, FROM + LENGTH - corner),
      new Coordinate(-half + corner, FROM + LENGTH - corner),
      new Coordinate(-half + corner, FROM + corner)
    };
    Polygon outline =
        (Polygon) new GeometryFactory().createPolygon(inside).buffer(corner, 16).norm().reverse();
    Outline cut = new Outline(outline, 0.5, FROM, FROM, FROM + LENGTH, FROM + LENGTH);
    Piece piece =
        new Piece("pipe", TapedDigit.of(round), cut, Midline.VOLAR, GapField.uniform(GAP), 1.2);
    return new FingerInPieces(
        piece.digit(), 80, List.of(piece), 0, Joining.SLIPPING, WornFingers.PA12);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.15, 0.3, 0.6})
  void pressesAsAnElasticFoundationDoes(double tension) throws DesignRefused, NotComputable {
    HoldingDesign skin = WornFingers.evenSkin(Fingers.design().holding(), KILOPASCAL, THICKNESS);
    HeldFinger finger = HeldFinger.of(pipe(), WornFingers.bodies(pipe(), 0.6), skin, 1.0, 0.01);
    Fastening wrap = new Fastening(25, 2, tension, 0, List.of());
    Resting resting = finger.heldRigid(wrap, new JointMoment(0, 0)).resting();
    double pressed = 0;
    double peak = 0;
    double touching = 0;
    for (int e = 0; e < finger.fitting().patches().size(); e++) {
      SkinPatch patch = finger.fitting().patches().get(e);
      pressed += resting.force(e) * Math.cos(patch.angle());
      peak = Math.max(peak, resting.force(e) / patch.area());
      touching += resting.force(e) > 0 ? patch.area() : 0;
    }
    // The outer half of the rim's round does not touch.
    double length = LENGTH - 1.2;
    double load = pressed / length;
    double depth =
        new BrentSolver(1e-12).solve(200, d -> carried(d) - load, GAP * 1.0001, 50 * GAP);
    double end = Math.acos(GAP / depth);
    assertThat(Math.toDegrees(end)).isBetween(30.0, 80.0);
    assertThat(peak).isCloseTo(FOUNDATION * (depth - GAP), Percentage.withPercentage(2));
    assertThat(touching / (2 * RADIUS * length)).isCloseTo(end, within(0.5 / RADIUS));
    // What is pressed is what the wrap's straight parts, tangent from rim to skin, pull down with.
    double rim = RADIUS + GAP + 1.2;
    // The outside ends where the rim's round begins, half a wall before the edge.
    double steep = Math.acos(RADIUS / rim) - 0.6 / RADIUS;
    double pull = 2 * 2 * tension / 25 * Math.cos(steep);
    assertThat(load).isCloseTo(pull * LENGTH / length, Percentage.withPercentage(2));
  }

  private static double carried(double depth) {
    double end = Math.acos(GAP / depth);
    return FOUNDATION
        * RADIUS
        * (depth * (end + Math.sin(end) * Math.cos(end)) - 2 * GAP * Math.sin(end));
  }
}
