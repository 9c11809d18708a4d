package org.midlateral.mechanics.held;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.midlateral.RoundFinger;
import org.midlateral.cut.Outline;
import org.midlateral.digit.TapedDigit;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.piece.GapField;
import org.midlateral.piece.Midline;
import org.midlateral.piece.Piece;

/** A half pipe spread at its rims, as a thin half ring. */
class SpreadShellTest {
  private static final double RADIUS = 9;
  private static final double WALL = 1;
  private static final double FROM = 12;
  private static final double LENGTH = 34;
  private static final double CORNER = 1.5;

  private static Piece pipe(double length) {
    double half = Math.PI * RADIUS / 2;
    Coordinate[] inside = {
      new Coordinate(-half + CORNER, FROM + CORNER),
      new Coordinate(half - CORNER, FROM + CORNER),
      new Coordinate(half - CORNER, FROM + length - CORNER),
      new Coordinate(-half + CORNER, FROM + length - CORNER),
      new Coordinate(-half + CORNER, FROM + CORNER)
    };
    Polygon outline =
        (Polygon) new GeometryFactory().createPolygon(inside).buffer(CORNER, 16).norm().reverse();
    Outline cut =
        new Outline(outline, 0.5, FROM, FROM + CORNER, FROM + length - CORNER, FROM + length);
    return new Piece(
        "pipe",
        TapedDigit.of(RoundFinger.of(RADIUS, 20, 40, 30, 30)),
        cut,
        Midline.VOLAR,
        GapField.uniform(0),
        WALL);
  }

  private static SpreadShell spread(Piece pipe, Isotropic plastic) throws Exception {
    FingerShell mesh = FingerShell.of(FingerShell.mesh(pipe, 1), plastic);
    return SpreadShell.of(FactoredShell.of(mesh));
  }

  /**
   * Opening of a half ring by forces at its ends, (pi/2) F R³/(E I); wide, it is a plate, stiffer
   * by 1/(1 - ν²) at most.
   */
  @Test
  void opensAsAHalfRingDoes() throws Exception {
    Isotropic plastic = new Isotropic(1500, 0.3);
    double r = RADIUS + WALL / 2;
    double ring = Math.PI / 2 * r * r * r * 12 / (1500 * LENGTH * WALL * WALL * WALL);
    double found = spread(pipe(LENGTH), plastic).perForce();

    assertThat(found).isBetween(0.85 * ring, 1.1 * ring);
    for (double force : List.of(0.5, 2.0)) {
      assertThat(spread(pipe(LENGTH), plastic).force(force * found))
          .isCloseTo(force, Percentage.withPercentage(1e-6));
    }
  }

  /**
   * The crown of a half ring bears F R, and its faces 6 F R/(E L t²); a ring whose wall is a ninth
   * of its radius bears some 4 % more inside (S. Timoshenko, Strength of Materials, curved bars;
   * from memory). Spread the shell is not even along its length: its middle bears more.
   */
  @Test
  void isStrainedAsAHalfRingIs() throws Exception {
    double r = RADIUS + WALL / 2;
    double ring = 6 * r / (1500 * LENGTH * WALL * WALL);
    SpreadShell found = spread(pipe(LENGTH), new Isotropic(1500, 0.3));

    assertThat(found.strainPerForce()).isBetween(0.9 * ring, 1.15 * ring);
    assertThat(found.strain(2 * found.perForce()))
        .isCloseTo(2 * found.strainPerForce(), Percentage.withPercentage(1e-9));
  }

  /** Twice the modulus, half the opening; a shorter pipe opens more. */
  @Test
  void goesWithModulusAndLength() throws Exception {
    double soft = spread(pipe(LENGTH), new Isotropic(750, 0.3)).perForce();
    double hard = spread(pipe(LENGTH), new Isotropic(1500, 0.3)).perForce();
    double brief = spread(pipe(LENGTH / 2), new Isotropic(1500, 0.3)).perForce();

    assertThat(soft).isCloseTo(2 * hard, Percentage.withPercentage(1e-6));
    assertThat(brief / hard).isBetween(1.8, 2.3);
  }
}
