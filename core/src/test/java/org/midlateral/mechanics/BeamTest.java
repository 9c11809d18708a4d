package org.midlateral.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/**
 * Beams on two supports with a force between them. Cases of Roark's Formulas for Stress and Strain,
 * table 8.1, and of Gere and Goodno, Mechanics of Materials, appendix G; all formulas from memory,
 * their numbers worked out apart.
 */
class BeamTest {
  private static final double NONE = Double.POSITIVE_INFINITY;

  /** A beam of two points of support at 0 and L, the force P at a. */
  private static ThreePoint load(double force, double a, double length) {
    double moment = force * a * (length - a) / length;
    return new ThreePoint(
        moment,
        a,
        new ContactZone(0, 0, 1),
        new ContactZone(length, length, 1),
        new ContactZone(a, a, 1));
  }

  private static SteppedBeam uniform(double length, double bending, double shear) {
    return new SteppedBeam(new double[] {0, length}, new double[] {bending}, new double[] {shear});
  }

  /** E 1000, b 10, h 3, L 60, P 5: P L³/48EI = 1 exactly; end slopes P L²/16EI = 0.05 each. */
  @Test
  void forceInTheMiddle() {
    ThreePoint load = load(5, 30, 60);
    SteppedBeam beam = uniform(60, 22500, NONE);

    assertThat(load.pipForce()).isCloseTo(5, within(1e-12));
    assertThat(load.moment()).isEqualTo(75);
    assertThat(load.deflection(beam)).isCloseTo(1.0, within(1e-12));
    assertThat(load.extensionLost(beam)).isCloseTo(0.1, within(1e-13));
  }

  /** P a² b²/3EIL = 0.945216049; slopes P a b (L+b)/6LEI and P a b (L+a)/6LEI. */
  @Test
  void forceOffTheMiddle() {
    ThreePoint load = load(5, 25, 60);
    SteppedBeam beam = uniform(60, 22500, NONE);

    assertThat(load.deflection(beam)).isCloseTo(0.945216049, within(1e-9));
    assertThat(load.extensionLost(beam)).isCloseTo(0.0513117284 + 0.0459104938, within(1e-10));
    assertThat(load.loading().moment(25)).isCloseTo(-5 * 25 * 35 / 60.0, within(1e-12));
  }

  /** I in the outer quarters, 2I in the middle half: 3PL³/256EI, slope 5PL²/128EI. */
  @Test
  void steppedInQuarters() {
    double ei = 22500;
    SteppedBeam beam =
        new SteppedBeam(
            new double[] {0, 15, 45, 60},
            new double[] {ei, 2 * ei, ei},
            new double[] {NONE, NONE, NONE});

    assertThat(load(5, 30, 60).deflection(beam)).isCloseTo(0.5625, within(1e-12));
    assertThat(load(5, 30, 60).extensionLost(beam))
        .isCloseTo(2 * 5 * 5 * 3600 / (128 * ei), within(1e-13));
  }

  /** 2I over the middle third: 0.0135030864 PL³/EI. */
  @Test
  void steppedInThirds() {
    double ei = 22500;
    SteppedBeam beam =
        new SteppedBeam(
            new double[] {0, 20, 40, 60},
            new double[] {ei, 2 * ei, ei},
            new double[] {NONE, NONE, NONE});

    assertThat(load(5, 30, 60).deflection(beam))
        .isCloseTo(0.0135030864 * 5 * 216000 / ei, withinPercentage(1e-6));
  }

  /** Timoshenko's beam: P L/4GA is added in the middle. */
  @Test
  void shearAddsItsShare() {
    SteppedBeam beam = uniform(60, 22500, 150);

    assertThat(load(5, 30, 60).deflection(beam)).isCloseTo(1 + 5 * 60 / (4 * 150.0), within(1e-12));
    SteppedBeam stiff = uniform(60, 22500, NONE);
    assertThat(load(5, 30, 60).deflection(stiff)).isCloseTo(1, within(1e-12));
  }

  /** An even load over the whole span: 5 w L⁴/384EI; here as the closure's zone. */
  @Test
  void evenLoad() {
    ThreePoint load =
        new ThreePoint(
            75,
            30,
            new ContactZone(0, 0, 1),
            new ContactZone(60, 60, 1),
            new ContactZone(0, 60, 1));

    assertThat(load.deflection(uniform(60, 22500, NONE)))
        .isCloseTo(5 * (5.0 / 60) * Math.pow(60, 4) / (384 * 22500), within(1e-12));
  }

  /**
   * A straight half-tube of mid radius 9, wall 1.6, length 75, E 400 MPa, Poisson's ratio 0.4,
   * under 5 N spread over 12 mm, its ends pressed over 8 mm. The beam's figures stand beside
   * quadratic solid elements, converged to four digits, whose deflection is 0.2313 mm and whose
   * extension lost is 1.330 degrees: the section closes up, which a beam does not know.
   */
  @Test
  void halfTubeBesideFiniteElements() {
    Section section = Section.of(java.util.List.of(Arcs.open(Math.PI / 2, 9, 1.6, 2000)));
    double shear = 400 / 2.8 * section.shearArea();
    SteppedBeam beam = uniform(75, 400 * section.moments().aboutY(), shear);
    SteppedBeam bendingOnly = uniform(75, 400 * section.moments().aboutY(), NONE);
    ThreePoint load =
        new ThreePoint(
            2.5 * 33.5,
            37.5,
            new ContactZone(0, 8, 1),
            new ContactZone(67, 75, 1),
            new ContactZone(31.5, 43.5, 1));

    assertThat(load.deflection(bendingOnly)).isCloseTo(0.2180, withinPercentage(0.3));
    assertThat(load.deflection(beam)).isCloseTo(0.2469, withinPercentage(1));
    assertThat(Math.toDegrees(load.extensionLost(bendingOnly)))
        .isCloseTo(1.124, withinPercentage(0.3));
    assertThat(Math.toDegrees(load.extensionLost(beam))).isCloseTo(1.180, withinPercentage(1));
  }

  /** The three forces balance, and their moments about the joint are equal. */
  @Test
  void forcesBalance() {
    ThreePoint load =
        new ThreePoint(
            50,
            26,
            new ContactZone(-18, -10, 80),
            new ContactZone(59, 67, 100),
            new ContactZone(20, 32, 240));

    assertThat(load.proximalArm()).isEqualTo(40);
    assertThat(load.distalArm()).isEqualTo(37);
    assertThat(load.proximalForce()).isEqualTo(1.25);
    assertThat(load.pipForce()).isEqualTo(load.proximalForce() + load.distalForce());
    assertThat(load.proximalPressure()).isEqualTo(1.25 / 80);
    assertThat(load.loading().shear(100)).isCloseTo(0, within(1e-12));
    assertThat(load.loading().moment(100)).isCloseTo(0, within(1e-10));
  }
}
