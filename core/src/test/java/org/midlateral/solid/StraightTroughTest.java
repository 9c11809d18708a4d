package org.midlateral.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.inspection.Conformance;
import org.midlateral.mesh.query.MeshAudit;

/**
 * A trough on a round, straight finger, against closed forms. Its ends cost something that no plain
 * formula knows, so two troughs of different length are compared: what they differ by is the
 * section times the length.
 */
class StraightTroughTest {
  /**
   * The section: half an annulus whose two ends are half-round and touch the mid-lateral plane. The
   * rim's centre stands at the angle pi/2 - atan(r / R) for its radius r and the mid radius R.
   */
  private static final double SECTION = section(StraightTrough.MIDDLE, StraightTrough.WALL);

  private static double section(double mid, double wall) {
    double angle = Math.PI / 2 - Math.atan(wall / 2 / mid);
    return 2 * angle * mid * wall + Math.PI * wall * wall / 4;
  }

  @Test
  void theVolumeConvergesToTheClosedForm() throws Exception {
    double coarse = Math.abs(perLength(0.8) - SECTION);
    double fine = Math.abs(perLength(0.4) - SECTION);
    double finest = Math.abs(perLength(0.2) - SECTION);

    assertThat(coarse / SECTION).isLessThan(2e-3);
    // Flat triangles miss by the square of their edges.
    assertThat(fine).isLessThan(coarse / 2.5);
    assertThat(finest).isLessThan(fine / 2.5);
    assertThat(finest / SECTION).isLessThan(2e-4);
  }

  @Test
  void wallAndGapAreWhatWasAskedFor() throws Exception {
    Solid solid = solid(40, 0.8);
    Conformance found =
        Conformance.of(solid, solid.hierarchy(), StraightTrough.CLEARANCE, java.util.List.of());

    assertThat(found.minWall()).isCloseTo(StraightTrough.WALL, within(ErrorBudget.CHORD));
    assertThat(found.minWall()).isGreaterThan(ErrorBudget.LEAST_WALL * StraightTrough.WALL);
    assertThat(found.gap().mean()).isCloseTo(StraightTrough.CLEARANCE, within(0.02));
    assertThat(found.gapShort()).isLessThan(ErrorBudget.CLEARANCE);
    assertThat(found.trimError().orElseThrow()).isLessThan(1e-3);
  }

  private static double perLength(double edge) throws Exception {
    double difference = volume(50, edge) - volume(30, edge);
    return difference / 20;
  }

  private static double volume(double length, double edge) throws Exception {
    return MeshAudit.of(solid(length, edge).mesh()).volume();
  }

  private static Solid solid(double length, double edge) throws Exception {
    return SolidMesher.mesh(StraightTrough.of(length), edge);
  }
}
