package org.midlateral.mechanics.held;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.midlateral.Fingers;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.finite.Tube;
import org.midlateral.mechanics.held.HeldJoint.Zone;
import org.midlateral.piece.Piece;
import org.midlateral.solid.Solid;
import org.midlateral.solid.SolidMesher;

/** Real pieces under the load of a held joint. */
class HeldShellTest {
  private static final double MOMENT = 50;

  static HeldJoint joint(Piece trough) {
    return joint(trough, MOMENT);
  }

  /** The usual zones on a trough: 8 mm at its two ends, 12 mm of closure on the PIP axis. */
  private static HeldJoint joint(Piece trough, double moment) {
    double axis = trough.digit().pipAxis();
    double proximal = trough.outline().proximal();
    double distal = trough.outline().distal();
    return new HeldJoint(
        axis,
        new Zone(proximal, proximal + 8),
        new Zone(distal - 8, distal),
        new Zone(axis - 6, axis + 6),
        moment);
  }

  /** 5 N of closure about a joint at 37 mm of 75. */
  private static HeldJoint pulled() {
    double moment = 5 / (1.0 / 33 + 1.0 / 34);
    return new HeldJoint(37, new Zone(0, 8), new Zone(67, 75), new Zone(31, 43), moment);
  }

  /** The trough reaches no farther than 75 mm. */
  @Test
  void aZoneOffTheTroughHasNoAnswer() throws Exception {
    FingerShell shell = FingerShell.alone(RealPieces.halfTube(), RealPieces.MATERIAL);
    Zone floor = new Zone(0, 8);
    Zone beyond = new Zone(80, 88);
    Zone middle = new Zone(31, 43);

    assertThatThrownBy(() -> HeldShell.solve(shell, new HeldJoint(37, floor, beyond, middle, 50)))
        .isInstanceOf(NotComputable.class)
        .hasMessage("no surface to put the load on");
    assertThatThrownBy(() -> HeldShell.solve(shell, new HeldJoint(37, floor, middle, beyond, 50)))
        .isInstanceOf(NotComputable.class)
        .hasMessage("no rim to put the load on");
  }

  private static HeldShell solve(Piece trough, double factor) throws DesignRefused, NotComputable {
    FingerShell shell = FingerShell.of(FingerShell.mesh(trough, factor), RealPieces.MATERIAL);
    return HeldShell.solve(shell, joint(trough));
  }

  private static HeldShell solveBonded(Measurements measured, double factor)
      throws DesignRefused, NotComputable {
    Piece trough = RealPieces.trough(measured, 0.5);
    Piece dorsal = RealPieces.dorsal(measured);
    FingerShell shell =
        FingerShell.bonded(
            FingerShell.mesh(trough, factor),
            FingerShell.mesh(dorsal, factor),
            RealPieces.MATERIAL);
    return HeldShell.solve(shell, joint(trough));
  }

  /**
   * A straight half tube, mid radius 9, wall 1.6, length 75, E 400, nu 0.4, 5 N with the joint at
   * 37: computed with quadratic solids in CalculiX 2.20, converged to four digits. Its edges are
   * square, those of the piece round; that moves the opening at the joint, 3.8 %.
   */
  @Test
  void halfTubeAgreesWithSolids() throws DesignRefused, NotComputable {
    Isotropic plastic = new Isotropic(400, 0.4);
    Piece tube = RealPieces.halfTube();
    FingerShell usual = FingerShell.of(FingerShell.mesh(tube, 1), plastic);
    Percentage one = Percentage.withPercentage(1);
    for (FingerShell shell : List.of(usual, FingerShell.alone(tube, plastic))) {
      HeldAnswer answer = HeldShell.solve(shell, pulled()).answer();
      assertThat(answer.deflectionAtPip()).isCloseTo(0.2313, one);
      assertThat(answer.extensionLost()).isCloseTo(1.330, one);
      assertThat(answer.opening().pip()).isCloseTo(-0.263, Percentage.withPercentage(5));
      assertThat(answer.closureForce()).isCloseTo(5, within(1e-6));
    }
    // At the flanks' ends, which no report tells, the opening changes fast along the rim.
    HeldAnswer.Opening ends = HeldShell.solve(usual, pulled()).answer().opening();
    assertThat(ends.proximal()).isCloseTo(-0.130, one);
    assertThat(ends.distal()).isCloseTo(-0.125, one);
  }

  @Test
  void supportsCarryNothingAndTheWorkIsStored() throws DesignRefused, NotComputable {
    for (Piece trough :
        List.of(
            RealPieces.trough(Fingers.ring(), 0.5), RealPieces.trough(RealPieces.bent(), 0.5))) {
      assertBalanced(solve(trough, 1.4).answer());
    }
    assertBalanced(solveBonded(Fingers.ring(), 1.4).answer());
  }

  private static void assertBalanced(HeldAnswer answer) {
    assertThat(answer.reaction()).isLessThan(1e-9);
    assertThat(answer.energyGap()).isCloseTo(0, within(1e-9));
    assertThat(answer.deflectionAtPip()).isPositive();
    assertThat(answer.extensionLost()).isPositive();
  }

  /** By hand: M over each arm, but for where within a zone the floor's middle lies. */
  @Test
  void forcesAreMomentOverArm() throws DesignRefused, NotComputable {
    Piece trough = RealPieces.trough(Fingers.ring(), 0.5);
    HeldJoint joint = joint(trough);
    HeldAnswer answer = solve(trough, 1.4).answer();
    Percentage one = Percentage.withPercentage(1);
    assertThat(answer.proximalForce()).isCloseTo(MOMENT / joint.proximalArm(), one);
    assertThat(answer.distalForce()).isCloseTo(MOMENT / joint.distalArm(), one);
    assertThat(answer.closureForce())
        .isCloseTo(answer.proximalForce() + answer.distalForce(), within(1e-9));
    double moments =
        answer.proximalForce() * joint.proximalArm() + answer.distalForce() * joint.distalArm();
    assertThat(moments / 2).isCloseTo(MOMENT, within(1e-9));
  }

  @Test
  void theLoadTurnedRoundTurnsTheAnswerRound() throws DesignRefused, NotComputable {
    Piece trough = RealPieces.trough(Fingers.ring(), 0.5);
    FingerShell shell = FingerShell.of(FingerShell.mesh(trough, 1.4), RealPieces.MATERIAL);
    HeldAnswer one = HeldShell.solve(shell, joint(trough)).answer();
    HeldJoint other = joint(trough, -2 * MOMENT);
    HeldAnswer twice = HeldShell.solve(shell, other).answer();
    assertThat(twice.deflectionAtPip()).isCloseTo(-2 * one.deflectionAtPip(), within(1e-10));
    assertThat(twice.extensionLost()).isCloseTo(-2 * one.extensionLost(), within(1e-9));
    assertThat(twice.opening().pip()).isCloseTo(-2 * one.opening().pip(), within(1e-10));
    assertThat(twice.largestStrain().value())
        .isCloseTo(-2 * one.largestStrain().value(), within(1e-10));
  }

  /** But for the strip at the rim, whose diagonals lean the same way round on both hands. */
  @Test
  void theOtherHandGivesTheSame() throws DesignRefused, NotComputable {
    Piece trough = RealPieces.trough(Fingers.ring(), 0.5);
    Solid right = FingerShell.mesh(trough, 1.4);
    HeldAnswer a =
        HeldShell.solve(FingerShell.of(right, RealPieces.MATERIAL), joint(trough)).answer();
    HeldAnswer b =
        HeldShell.solve(FingerShell.of(right.mirrored(), RealPieces.MATERIAL), joint(trough))
            .answer();
    Percentage tiny = Percentage.withPercentage(0.01);
    assertThat(b.deflectionAtPip()).isCloseTo(a.deflectionAtPip(), tiny);
    assertThat(b.extensionLost()).isCloseTo(a.extensionLost(), tiny);
    assertThat(b.largestStrain().value())
        .isCloseTo(a.largestStrain().value(), Percentage.withPercentage(1));
  }

  /** Edges of 2, 1.4, 1 and 0.7 times the usual: the two last differ by less than 1 %. */
  @Test
  void convergesAsTheMeshIsRefined() throws DesignRefused, NotComputable {
    Piece trough = RealPieces.trough(Fingers.ring(), 0.5);
    double[] factors = {2, 1.4, 1, 0.7};
    double[][] found = new double[4][];
    for (int k = 0; k < 4; k++) {
      HeldAnswer answer = solve(trough, factors[k]).answer();
      found[k] = new double[] {answer.deflectionAtPip(), answer.extensionLost()};
      System.out.printf(
          "edges %.1f: %d unknowns, deflection %.5f mm, extension lost %.4f degrees, strain %.6f%n",
          factors[k], answer.unknowns(), found[k][0], found[k][1], answer.largestStrain().value());
    }
    for (int m = 0; m < 2; m++) {
      double coarse = Math.abs(found[0][m] / found[3][m] - 1);
      double usual = Math.abs(found[2][m] / found[3][m] - 1);
      assertThat(coarse).isLessThan(0.03);
      assertThat(usual).isLessThan(0.01).isLessThan(coarse);
    }
  }

  /**
   * Two halves tied along their edges, their ends so far out that the round rims there have as much
   * section as square ones, are the tube in one piece, which agrees with solids; but for their
   * corners, cut by a radius of 1.5 mm, which cost 2 %. The trough alone loses four times as much.
   */
  @Test
  void aTubeClosedEdgeToEdgeIsTheTube() throws DesignRefused, NotComputable {
    Tube.Measures whole = wholeTube();
    HeldAnswer answer = closed(0.5 - Math.PI / 8);

    assertThat(answer.extensionLost() / whole.lost()).isBetween(1.0, 1.03);
    assertThat(answer.deflectionAtPip() / whole.rise()).isBetween(1.0, 1.025);
  }

  /** With ends that have the section of round rims it loses 6 % more: that is the rims' own. */
  @Test
  void theRoundRimsAtItsEndsCostATubeASixteenth() throws DesignRefused, NotComputable {
    double square = closed(0.5 - Math.PI / 8).extensionLost();

    assertThat(closed(0).extensionLost() / square).isBetween(1.04, 1.08);
  }

  private static Tube.Measures wholeTube() throws NotComputable {
    Tube tube = new Tube(x -> 9, 1.6, 75, 37, 180, 1);
    return tube.measures(tube.solve()::displacement);
  }

  /** Two halves whose ends lie so many walls beyond the tube's. */
  private static HeldAnswer closed(double beyond) throws DesignRefused, NotComputable {
    FingerShell halves =
        FingerShell.closed(
            RealPieces.tubeHalf("trough", beyond),
            RealPieces.tubeHalf("dorsal", beyond),
            new Isotropic(400, 0.4));
    return HeldShell.solve(halves, pulled()).answer();
  }

  @Test
  void strainIsCarriedToThePrintedSurface() throws DesignRefused, NotComputable {
    Piece trough = RealPieces.trough(Fingers.ring(), 0.5);
    HeldShell held = solve(trough, 1);
    Solid printed = SolidMesher.mesh(trough, 0.8);
    double[] strains = held.strainsOn(printed);
    assertThat(strains).hasSize(printed.mesh().vertexCount());
    HeldAnswer.Strain largest = held.answer().largestStrain();
    double most = Arrays.stream(strains).map(Math::abs).max().orElseThrow();
    assertThat(most).isCloseTo(Math.abs(largest.value()), Percentage.withPercentage(2));
    // On the rim beside the joint, in tension.
    assertThat(largest.value()).isPositive();
    assertThat(largest.station()).isCloseTo(trough.digit().pipAxis(), within(3.0));
    assertThat(Math.abs(largest.girth())).isCloseTo(16.5, within(0.3));
    Solid dorsal = SolidMesher.mesh(RealPieces.dorsal(Fingers.ring()), 0.8);
    assertThatThrownBy(() -> held.strainsOn(dorsal))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("dorsal");
  }

  /** Vents stand amid the piece: their rounds must not wear what holds at its far edge. */
  @Test
  void aVentWearsTheStrainBesideIt() throws DesignRefused, NotComputable {
    Piece trough = RealPieces.trough(Fingers.ring(), 0.5);
    HeldShell held = solve(trough, 1);
    Polygon whole = trough.outline().polygon();
    Geometry vent = whole.getFactory().createPoint(new Coordinate(0, 12)).buffer(1.5);
    Piece vented =
        trough.withOutline(trough.outline().withPolygon((Polygon) whole.difference(vent)));
    Solid printed = SolidMesher.mesh(vented, 0.8);
    assertThat(printed.edgeVertices()).isGreaterThan(printed.firstLoop());
    double[] strains = held.strainsOn(printed);
    double beside = 0;
    for (int i = printed.firstLoop(); i < printed.edgeVertices(); i++) {
      double both = Math.max(at(strains, i), at(strains, printed.innerVertices() + i));
      beside = Math.max(beside, both);
    }
    int round = 2 * printed.innerVertices() + (printed.rimStrips() - 1) * printed.firstLoop();
    assertThat(round).isLessThan(strains.length);
    for (int i = round; i < strains.length; i++) {
      assertThat(at(strains, i)).isPositive().isLessThanOrEqualTo(beside);
    }
  }

  private static double at(double[] strains, int vertex) {
    return Math.abs(strains[vertex]);
  }
}
