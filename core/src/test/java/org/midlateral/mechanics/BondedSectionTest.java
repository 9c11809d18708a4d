package org.midlateral.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Pieces that meet are one tube, whatever holes either has. */
class BondedSectionTest {
  private static final double RADIUS = 9;
  private static final double WALL = 1.6;
  private static final int STEPS = 400;

  /** Bredt's constant of the thin ring: 2 pi r³ t. */
  private static final double BREDT = 2 * Math.PI * RADIUS * RADIUS * RADIUS * WALL;

  private static Loop arc(double fromDegrees, double toDegrees) {
    return Arcs.between(
        Math.toRadians(fromDegrees), Math.toRadians(toDegrees), RADIUS, WALL, STEPS);
  }

  private static Section bonded(List<Loop> trough, List<Loop> shell) {
    return Sections.joined(List.of(trough, shell), Joining.BONDED);
  }

  @Test
  void twoHalvesEdgeToEdgeAreATube() {
    Section tube = bonded(List.of(arc(-90, 90)), List.of(arc(90, 270)));

    assertThat(tube.closed()).isTrue();
    assertThat(tube.torsion()).isCloseTo(BREDT, within(0.01 * BREDT));
  }

  /**
   * A vent of 10 degrees in the shell: the tube's second moment less the vent's, J as beside it.
   */
  @Test
  void aHoleInOneDoesNotOpenTheTube() {
    Section whole = bonded(List.of(arc(-90, 90)), List.of(arc(90, 270)));
    Section vented = bonded(List.of(arc(-90, 90)), List.of(arc(90, 150), arc(160, 270)));

    assertThat(vented.closed()).isTrue();
    assertThat(vented.torsion()).isCloseTo(BREDT, within(0.01 * BREDT));
    assertThat(vented.moments().area())
        .isCloseTo(whole.moments().area() * 350 / 360, within(1e-3 * whole.moments().area()));
    assertThat(vented.moments().aboutY())
        .isLessThan(whole.moments().aboutY())
        .isGreaterThan(0.9 * whole.moments().aboutY());
  }

  /** A seam of 5 degrees between the two: they do not meet there, and slip. */
  @Test
  void aGapBetweenTheTwoLeavesThemSlipping() {
    List<Loop> trough = List.of(arc(-90, 90));
    List<Loop> shell = List.of(arc(95, 270));
    Section apart = bonded(trough, shell);

    assertThat(apart.closed()).isFalse();
    assertThat(apart.moments().aboutY())
        .isCloseTo(
            Section.of(trough).moments().aboutY() + Section.of(shell).moments().aboutY(),
            within(1e-9));
  }
}
