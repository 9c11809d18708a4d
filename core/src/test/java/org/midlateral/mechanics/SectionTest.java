package org.midlateral.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Sections given as polygons.
 *
 * <p>Pilkey: W. D. Pilkey, Analysis and Design of Elastic Beams, Wiley 2002, as quoted by the
 * validation tests of the open library section-properties (tests/validation/test_pilkey.py). Exact:
 * closed forms worked out apart with 30 digits.
 */
class SectionTest {
  private static final int FINE = 4000;

  /** Pilkey, example B.7, p. 451: an open arc of 120 degrees. */
  @Test
  void openArc() {
    Section arc = Section.of(List.of(Arcs.open(Math.PI / 3, 16, 0.5, FINE)));
    AreaMoments moments = arc.moments();

    assertThat(moments.area()).isCloseTo(16.75516, within(1e-5));
    assertThat(-moments.n()).isCloseTo(13.23297, within(1e-5));
    assertThat(moments.y()).isCloseTo(0, within(1e-9));
    assertThat(moments.aboutY()).isCloseTo(98.18931, within(2e-4));
    assertThat(moments.aboutN()).isCloseTo(1258.15764, within(2e-3));
    // Pilkey's J, 1.38355, is by finite elements; b t³/3 leaves the square ends out: +0.92 %.
    assertThat(arc.torsion()).isCloseTo(1.38355, withinPercentage(1.0));
    assertThat(arc.torsion()).isCloseTo(1.39626, withinPercentage(0.1));
    // Pilkey's A / 4.60034, by finite elements at a Poisson's ratio of 1/3.
    assertThat(moments.area() / arc.shearArea()).isCloseTo(4.60034, withinPercentage(1));
    assertThat(arc.closed()).isFalse();
  }

  /**
   * A half tube with a hole whose edge moves by half a degree: its shear area follows smoothly,
   * wherever the edge falls between the directions that the wall is sorted by.
   */
  @Test
  void aHolesEdgeMovesTheShearAreaSmoothly() {
    double before = Double.NaN;
    for (int i = 0; i <= 50; i++) {
      double edge = Math.toRadians(20 + 0.01 * i);
      Section holed =
          Section.of(
              List.of(
                  Arcs.between(-Math.PI / 2, edge, 9, 1.6, 400),
                  Arcs.between(edge + Math.toRadians(18), Math.PI / 2, 9, 1.6, 400)));
      if (i > 0) {
        assertThat(holed.shearArea()).as("step %d", i).isCloseTo(before, withinPercentage(0.5));
      }
      before = holed.shearArea();
    }
    assertThat(before).isBetween(1.0, 9 * Math.PI * 1.6);
  }

  /** Pilkey, example B.4, p. 444: a tube slit along its length, here at the dorsal midline. */
  @Test
  void slitTube() {
    Section tube = Section.of(List.of(Arcs.open(Math.PI - 1e-9, 8, 1.25, FINE)));

    assertThat(tube.moments().area()).isCloseTo(62.83182, within(5e-4));
    assertThat(tube.moments().aboutY()).isCloseTo(2022.889, withinPercentage(1e-3));
    assertThat(tube.moments().aboutN()).isCloseTo(2022.889, withinPercentage(1e-3));
  }

  /** The same tube with a slit wide enough to be seen: J 32.23967 by Pilkey, thin 32.72492. */
  @Test
  void slitTubeTwistsEasily() {
    double half = Math.PI - 0.01;
    Section tube = Section.of(List.of(Arcs.open(half, 8, 1.25, FINE)));

    assertThat(tube.closed()).isFalse();
    assertThat(tube.torsion()).isCloseTo(32.23967, withinPercentage(2));
  }

  /** Pilkey, example 5.7, p. 189: outer diameter 8, wall 0.25; closed 91.49, slit 0.13. */
  @Test
  void closedTube() {
    Section tube = Section.of(Arcs.ring(4, 3.75, FINE));

    assertThat(tube.closed()).isTrue();
    // Exact 91.49275, Bredt 91.39764.
    assertThat(tube.torsion()).isCloseTo(91.39764, withinPercentage(0.02));
    assertThat(tube.torsion()).isCloseTo(91.49, withinPercentage(0.15));
    double mid = 3.875;
    Section slit = Section.of(List.of(Arcs.open(Math.PI - 0.01, mid, 0.25, FINE)));
    // 2 pi r t³/3 = 0.126809.
    assertThat(slit.torsion()).isCloseTo(0.126809, withinPercentage(0.5));
    // Thin ring: A/2 carries the shear (from memory, any handbook).
    assertThat(tube.moments().area() / tube.shearArea()).isCloseTo(2, withinPercentage(0.5));
  }

  /** Pilkey, example B.1, p. 434: a closed elliptic tube, mid semi-axes 8 and 5, wall 1. */
  @Test
  void closedEllipse() {
    List<Loop> loops = List.of(offset(0.5, false), offset(-0.5, true));

    Section tube = Section.of(loops);

    assertThat(tube.moments().area()).isCloseTo(41.38626, within(1e-3));
    assertThat(tube.moments().aboutY()).isCloseTo(580.42697, withinPercentage(0.01));
    assertThat(tube.moments().aboutN()).isCloseTo(1180.33120, withinPercentage(0.01));
    // By finite elements 1537.38165, Bredt 1526.2419.
    assertThat(tube.torsion()).isCloseTo(1526.2419, withinPercentage(0.1));
    assertThat(tube.torsion()).isCloseTo(1537.38165, withinPercentage(1));
  }

  /** The curve at a distance from the ellipse, along its normal. */
  private static Loop offset(double distance, boolean hole) {
    double[] yn = new double[2 * FINE];
    for (int i = 0; i < FINE; i++) {
      double turn = 2 * Math.PI * i / FINE * (hole ? -1 : 1);
      double ny = 5 * Math.cos(turn);
      double nn = 8 * Math.sin(turn);
      double size = Math.hypot(ny, nn);
      yn[2 * i] = 8 * Math.cos(turn) + distance * ny / size;
      yn[2 * i + 1] = 5 * Math.sin(turn) + distance * nn / size;
    }
    return new Loop(yn);
  }

  /**
   * The half annulus of mid radius 10, by wall: area, centroid, second moment (exact, 30 digits),
   * and how far the thin formula is off.
   */
  @Test
  void thickHalfAnnulus() {
    double[][] table = {
      {1.6, 50.265482, 6.3797789, 483.474552, -1.53},
      {2.0, 62.831853, 6.3874184, 609.524669, -2.36},
      {2.4, 75.398224, 6.3967555, 739.017154, -3.37},
      {3.2, 100.530965, 6.4205226, 1011.028796, -5.82}
    };
    for (double[] row : table) {
      double wall = row[0];
      AreaMoments half = AreaMoments.of(List.of(Arcs.open(Math.PI / 2, 10, wall, 40000)));

      assertThat(half.area()).isCloseTo(row[1], withinPercentage(1e-6));
      assertThat(-half.n()).isCloseTo(row[2], withinPercentage(1e-6));
      assertThat(half.aboutY()).isCloseTo(row[3], withinPercentage(1e-6));
      assertThat(Arcs.second(Math.PI / 2, 10, wall)).isCloseTo(row[3], withinPercentage(1e-7));
      double thin = 100 * (Arcs.thin(Math.PI / 2, 10, wall) / row[3] - 1);
      assertThat(thin).isCloseTo(row[4], within(0.005));
    }
  }

  /**
   * Machinery's Handbook, half annulus (from memory): 0.1098 (R⁴ - r⁴) - 0.283 R² r² (R-r)/(R+r).
   */
  @Test
  void halfAnnulusOfTheHandbook() {
    double handbook = 0.1098 * (1e4 - 4096) - 0.283 * 100 * 64 * 2 / 18;

    AreaMoments half = AreaMoments.of(List.of(Arcs.open(Math.PI / 2, 9, 2, FINE)));

    assertThat(half.aboutY()).isCloseTo(handbook, withinPercentage(0.1));
  }

  /** A turned rectangle 4 by 2: bh³/12, and its axes are found again. */
  @Test
  void principalAxes() {
    double turn = 0.3;
    double[] yn = new double[8];
    double[][] corners = {{-2, -1}, {2, -1}, {2, 1}, {-2, 1}};
    for (int i = 0; i < 4; i++) {
      yn[2 * i] = 5 + corners[i][0] * Math.cos(turn) - corners[i][1] * Math.sin(turn);
      yn[2 * i + 1] = -7 + corners[i][0] * Math.sin(turn) + corners[i][1] * Math.cos(turn);
    }

    AreaMoments box = AreaMoments.of(List.of(new Loop(yn)));

    assertThat(box.y()).isCloseTo(5, within(1e-12));
    assertThat(box.n()).isCloseTo(-7, within(1e-12));
    // Mohr's circle; about the long side's axis the second moment is the smaller one.
    double mean = (2 * 64 + 4 * 8) / 24.0;
    double radius = (2 * 64 - 4 * 8) / 24.0;
    assertThat(box.aboutY()).isCloseTo(mean - radius * Math.cos(2 * turn), within(1e-9));
    assertThat(box.aboutN()).isCloseTo(mean + radius * Math.cos(2 * turn), within(1e-9));
    assertThat(box.product()).isCloseTo(radius * Math.sin(2 * turn), within(1e-9));
  }

  /** Two unbonded halves give twice the half; bonded they give the ring: 10.4633 halves (exact). */
  @Test
  void slippingAndBondedHalves() {
    Loop volar = Arcs.open(Math.PI / 2, 10, 1.6, FINE);
    double[] turned = new double[2 * volar.size()];
    for (int i = 0; i < volar.size(); i++) {
      turned[2 * i] = -volar.y(i);
      turned[2 * i + 1] = -volar.n(i);
    }
    Loop dorsal = new Loop(turned);
    Section half = Section.of(List.of(volar));

    Section slipping = half.slippingWith(Section.of(List.of(dorsal)));
    Section bonded = Section.of(List.of(volar, dorsal));

    assertThat(slipping.moments().aboutY())
        .isCloseTo(2 * half.moments().aboutY(), withinPercentage(1e-9));
    assertThat(bonded.moments().aboutY() / half.moments().aboutY())
        .isCloseTo(10.4633, withinPercentage(1e-3));
    assertThat(bonded.closed()).isTrue();
    // Bredt; exact 10117.4363.
    assertThat(bonded.torsion()).isCloseTo(10053.0965, withinPercentage(0.02));
    assertThat(slipping.torsion()).isCloseTo(2 * 42.89321, withinPercentage(0.1));
  }
}
