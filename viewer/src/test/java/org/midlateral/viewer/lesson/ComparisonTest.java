package org.midlateral.viewer.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.Orders;
import org.midlateral.mechanics.finite.HeldShell;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.Rigidity;
import org.midlateral.solid.Solid;
import org.midlateral.viewer.sample.Sample;

/** What is drawn moves as far as the figures under it say. */
class ComparisonTest {
  @ParameterizedTest
  @EnumSource(names = {"SLIM", "DEFICIT"})
  void theFloorIsDrawnWhereTheFiguresHaveIt(Sample sample) throws Exception {
    Order order = Orders.parse(sample.text(), "", List.of()).order();
    Orthosis made = Orthosis.make(order);
    Rigidity rigidity = Rigidity.of(made, List.of(0.3, 0.5));
    DigitSurface digit = made.digit();
    for (int i = 0; i < 2; i++) {
      Rigidity.Curve curve = rigidity.curves().get(i);
      HeldShell held = curve.held().orElseThrow();
      AtRest rest = AtRest.of(held, curve.support());
      double expected = rigidity.rigidity().wraps().get(i).finiteElements().deflectionAtPip();
      double proximal = rise(rest, held, digit, curve.support().proximal().middle());
      double axis = rise(rest, held, digit, digit.pipAxis());
      double distal = rise(rest, held, digit, curve.support().distal().middle());
      assertThat(proximal).isCloseTo(0, within(0.02 * expected));
      assertThat(distal).isCloseTo(0, within(0.02 * expected));
      assertThat(axis).isCloseTo(expected, Percentage.withPercentage(3));
      assertThat(nearest(rest, held, digit.pipAxis()).dot(dorsal(digit)))
          .isCloseTo(expected, Percentage.withPercentage(5));
    }
  }

  /** Dorsal displacement of the floor at a station (mm). */
  private static double rise(AtRest rest, HeldShell held, DigitSurface digit, double station) {
    HeldShell.Moved floor = held.floor(station);
    return rest.rested(floor.place(), floor.moved()).dot(dorsal(digit));
  }

  /** At the PIP axis. */
  private static Vector3D dorsal(DigitSurface digit) {
    Vector3D along = digit.tangent(digit.pipAxis());
    return Vector3D.of(-along.getZ(), 0, along.getX());
  }

  /** Displacement of the vertex nearest to the floor at a station; it may be 0.8 mm off (mm). */
  private static Vector3D nearest(AtRest rest, HeldShell held, double station) {
    Solid trough = held.pieces().get(0);
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int v = 0; v < trough.innerVertices(); v++) {
      double off = Math.hypot(trough.station(v) - station, 8 * trough.angle(v));
      if (off < least) {
        least = off;
        best = v;
      }
    }
    return rest.displacement(0, best);
  }

  @ParameterizedTest
  @EnumSource(names = "SLIM")
  void allWrapsAreDrawnByElementsAndToOneScale(Sample sample) throws Exception {
    Order order = Orders.parse(sample.text(), "", List.of()).order();
    Comparison comparison = Comparison.of(order);
    assertThat(comparison.byElements()).isTrue();
    assertThat(comparison.cases()).hasSize(4);
    double[] farthest = comparison.cases().stream().mapToDouble(Bent::farthest).toArray();
    assertThat(farthest[0]).isGreaterThan(farthest[1]);
    assertThat(farthest[1]).isGreaterThan(farthest[2]);
    // The largest is drawn 13 mm long at most, and more than a third of that.
    assertThat(farthest[0] * comparison.exaggeration()).isBetween(4.0, 13.0);
  }
}
