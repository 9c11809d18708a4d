package org.midlateral.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.midlateral.Fingers;
import org.midlateral.RoundFinger;
import org.midlateral.cut.MidlateralCut;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.Measurements;
import org.midlateral.mechanics.Donning.ShellProfile;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.piece.Piece;
import org.midlateral.relief.Relief;
import org.midlateral.shell.DorsalShell;
import org.midlateral.solid.SolidMesher;
import org.midlateral.trough.Trough;

/** What it takes to push a shell on, against handbook cases and closed forms of a round finger. */
class DonningTest {
  private static final double RADIUS = 9;
  private static final double CLEARANCE = 0.3;
  private static final double WALL = 1.6;
  private static final double FIT_GAP = 0.3;

  /**
   * Half ring, radius R, opened by two opposite forces at its ends: opening (pi/2) F R^3/(E I),
   * largest moment F R at the crown (S. Timoshenko, Strength of Materials, part I, curved bars of
   * small initial curvature; from memory). So an opening d strains a wall t by t/2 F R/(E I) = d
   * t/(pi R^2).
   */
  @ParameterizedTest
  @CsvSource({"8, 1.6, 1", "12, 0.8, 0.3", "20, 3, 5"})
  void aHalfRingIsStrainedAsTheHandbookSays(double radius, double wall, double opening) {
    double strain = arc(radius, Math.PI / 2).strain(opening, wall);

    assertThat(strain)
        .isCloseTo(opening * wall / (Math.PI * radius * radius), within(2e-4 * strain));
  }

  /**
   * An arc of half-angle a about the crown, by integrating h = R (cos p - cos a) by hand: the
   * integral of h^2 is R^3 (a + 2 a cos^2 a - 3 sin a cos a), the crown's lever R (1 - cos a).
   */
  @ParameterizedTest
  @CsvSource({"1.2", "1.9", "2.4"})
  void anArcIsStrainedAsItsIntegralSays(double half) {
    double radius = 10;
    double c = Math.cos(half);
    double integral = Math.pow(radius, 3) * (half + 2 * half * c * c - 3 * Math.sin(half) * c);
    double expected = 0.8 * 1.2 / 2 * radius * (1 - c) / integral;

    assertThat(arc(radius, half).strain(0.8, 1.2)).isCloseTo(expected, within(1e-3 * expected));
  }

  /**
   * A portal of two legs L on a bridge B, opened at the feet: F (2 L^3/3 + L^2 B)/(E I), largest
   * moment F L (two cantilevers on a bar in pure bending; from memory).
   */
  @Test
  void aPortalIsStrainedAsTwoCantileversOnABar() {
    double leg = 10;
    double bridge = 16;
    ShellProfile portal = portal(leg, bridge);
    double integral = 2 * Math.pow(leg, 3) / 3 + leg * leg * bridge;

    assertThat(portal.strain(1, 2)).isCloseTo(leg / integral, within(1e-3 * leg / integral));
  }

  @Test
  void aShellThatDropsOnCostsNoStrain() {
    assertThat(arc(9, Math.PI / 2).strain(0, 1.6)).isZero();
  }

  /**
   * Each rim is a half circle about the middle of the wall, half a wall before the outline. The
   * trough is widest at its outer side, the shell narrowest at its inner side.
   */
  @ParameterizedTest
  @CsvSource({"2", "3", "4", "5"})
  void mouthAndWidestOfARoundFingerAreThoseOfCircles(double overlap) throws Exception {
    Donning found = Donning.of(trough(0.5), shell(0.5, overlap), overlap);
    double outside = RADIUS + CLEARANCE + WALL;
    double middle = outside + FIT_GAP + WALL / 2;
    double past = overlap / RADIUS - Math.atan(WALL / 2 / middle);
    double mouth = 2 * middle * Math.cos(past) - WALL;

    double widest =
        2 * (outside - WALL / 2) * Math.cos(Math.atan(WALL / 2 / (outside - WALL / 2))) + WALL;
    assertThat(found.widest()).isCloseTo(widest, within(0.01));
    assertThat(found.mouth()).isCloseTo(mouth, within(0.01));
    assertThat(found.spread()).isCloseTo(Math.max(0, widest - mouth), within(0.02));
    if (found.spread() > 0) {
      assertThat(found.strain()).isPositive();
    } else {
      assertThat(found.strain()).isZero();
    }
  }

  /** A shallow trough is widest at its rim: the middle of the wall there and half a wall more. */
  @ParameterizedTest
  @CsvSource({"0.3", "0.4"})
  void aShallowTroughIsWidestAtItsRim(double wrap) throws Exception {
    Donning found = Donning.of(trough(wrap), shell(wrap, 3), 3);
    double middle = RADIUS + CLEARANCE + WALL / 2;
    double angle = Math.PI * wrap - Math.atan(WALL / 2 / middle);
    double widest = 2 * middle * Math.sin(angle) + WALL;

    assertThat(found.widest()).isCloseTo(widest, within(0.01));
  }

  /** The same two widths from the meshes, by the triangles' corners about the middle. */
  @Test
  void mouthAndWidestAreThoseOfTheMeshes() throws Exception {
    Piece trough = trough(0.5);
    Piece shell = shell(0.5, 4);
    Donning found = Donning.of(trough, shell, 4);
    TriangleMesh volar = SolidMesher.mesh(trough, 0.5).mesh();
    TriangleMesh dorsal = SolidMesher.mesh(shell, 0.5).mesh();
    double middle = trough.digit().pipAxis();
    double widest = 0;
    for (int v = 0; v < volar.vertexCount(); v++) {
      if (Math.abs(volar.x(v) - middle) < 3) {
        widest = Math.max(widest, Math.abs(volar.y(v)));
      }
    }
    double mouth = Double.POSITIVE_INFINITY;
    for (int v = 0; v < dorsal.vertexCount(); v++) {
      if (Math.abs(dorsal.x(v) - middle) < 3 && dorsal.z(v) < -0.5) {
        mouth = Math.min(mouth, Math.abs(dorsal.y(v)));
      }
    }

    assertThat(2 * widest).isCloseTo(found.widest(), within(0.03));
    assertThat(2 * mouth).isCloseTo(found.mouth(), within(0.03));
  }

  private static ShellProfile arc(double radius, double half) {
    double[] y = new double[241];
    double[] depth = new double[241];
    for (int i = 0; i <= 240; i++) {
      double p = half * (i / 120.0 - 1);
      y[i] = radius * Math.sin(p);
      depth[i] = radius * Math.cos(p);
    }
    return new ShellProfile(y, depth);
  }

  private static ShellProfile portal(double leg, double bridge) {
    double[] y = new double[241];
    double[] depth = new double[241];
    for (int i = 0; i <= 240; i++) {
      y[i] = bridge / 2 * Math.max(-1, Math.min(1, (i - 120) / 40.0));
      depth[i] = leg * Math.min(1, Math.min(i, 240 - i) / 80.0);
    }
    return new ShellProfile(y, depth);
  }

  private static Measurements finger() {
    return RoundFinger.of(RADIUS);
  }

  private static Piece trough(double wrap) throws Exception {
    Design.TroughDesign design = Fingers.trough(wrap, Design.DistalEnd.OPEN);
    DigitSurface digit = TapedDigit.of(finger());
    return Trough.of(design, digit, MidlateralCut.of(finger(), design, digit));
  }

  private static Piece shell(double wrap, double overlap) throws Exception {
    Design usual = Fingers.design();
    Design design =
        usual
            .withTrough(Fingers.trough(wrap, Design.DistalEnd.OPEN))
            .withDorsalShell(usual.dorsalShell().withOverlap(overlap));
    Piece trough = trough(wrap);
    Design.ReliefDesign none =
        new Design.ReliefDesign(Design.Make.NO, false, 1, 8, 6, 3, List.of());
    Relief relief = Relief.of(finger(), none, trough.digit());
    return DorsalShell.of(design, trough.digit(), trough, relief.over(trough), relief);
  }
}
