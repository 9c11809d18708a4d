package org.midlateral.recipe.rigidity;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mechanics.Loop;
import org.midlateral.mechanics.MeshCut;
import org.midlateral.mechanics.SectionPlane;
import org.midlateral.recipe.Orthosis;
import org.midlateral.solid.Solid;

/**
 * Cuts of both pieces at the PIP axis and at both ends of the shell, as polygons of JTS: the trough
 * lies within the shell's arms and the gap between the two is even.
 */
class NestedSectionsTest {
  private static final GeometryFactory PLANE = new GeometryFactory();

  @ParameterizedTest
  @CsvSource({
    "slim-little, 0.5",
    "bulbous-ring, 0.5",
    "left-deficit, 0.5",
    "slim-little, 0.35",
    "slim-little, 0.55"
  })
  void theCurvesNestWithEvenGaps(String sample, double wrap) throws Exception {
    Order order =
        Orders.read(
                Path.of("..", "samples", sample + ".yaml"),
                List.of("trough.wrap=" + wrap, "print.edge-length=1.2 mm"))
            .order();
    Orthosis made = Orthosis.make(order);
    Solid shell = made.dorsalShell().orElseThrow();
    double fitGap = order.design().dorsalShell().fitGap();
    double from = shell.piece().outline().flankStart() + 1;
    double to = shell.piece().outline().flankEnd() - 1;
    for (double station : new double[] {made.digit().pipAxis(), from, to}) {
      Geometry volar = cut(made.trough(), station);
      Geometry dorsal = cut(shell, station);

      assertThat(volar.getNumGeometries()).isEqualTo(1);
      assertThat(dorsal.getNumGeometries()).isEqualTo(1);
      assertThat(volar.disjoint(dorsal)).isTrue();
      // A plane across a flank that slopes cuts the gap at a slant: up to a tenth wider.
      double distance = volar.distance(dorsal);
      assertThat(distance).isBetween(fitGap - ErrorBudget.FIT_GAP, 1.1 * fitGap + 0.05);
      assertThat(widestInOverlap(volar, dorsal, made.trough().piece().wall()))
          .as("station %.1f", station)
          .isLessThan(1.1 * fitGap + 0.1);
      // Each arm of the shell has trough beside it on both hands: the overlap is there.
      assertThat(volar.buffer(1.5 * fitGap + 0.1).intersection(dorsal).getNumGeometries())
          .isEqualTo(2);
    }
  }

  /** Largest gap from the trough's outside to the shell, a wall away from both rims. */
  private static double widestInOverlap(Geometry volar, Geometry dorsal, double wall) {
    double widest = 0;
    for (int side = -1; side <= 1; side += 2) {
      Coordinate rim = last(volar, side, 1);
      Coordinate tip = last(dorsal, side, -1);
      for (Coordinate c : volar.getCoordinates()) {
        boolean overlapped = c.y < rim.y && c.y > tip.y && side * c.x > side * tip.x;
        if (overlapped
            && c.distance(rim) > wall
            && c.distance(tip) > 1.5 * wall
            && isOutside(volar, c)) {
          widest = Math.max(widest, PLANE.createPoint(c).distance(dorsal));
        }
      }
    }
    return widest;
  }

  /** The most dorsal (1) or the most volar (-1) point on one side. */
  private static Coordinate last(Geometry cut, int side, int way) {
    Coordinate last = null;
    for (Coordinate c : cut.getCoordinates()) {
      if (side * c.x > 0 && (last == null || way * c.y > way * last.y)) {
        last = c;
      }
    }
    return last;
  }

  /** Whether the trough's centre lies on the material's side of a point of its boundary. */
  private static boolean isOutside(Geometry volar, Coordinate c) {
    double share = 0.3 / Math.hypot(c.x, c.y);
    Coordinate inward = new Coordinate(c.x * (1 - share), c.y * (1 - share));
    return volar.contains(PLANE.createPoint(inward));
  }

  static Geometry cut(Solid solid, double station) {
    SectionPlane plane = SectionPlane.at(solid.piece().digit(), station);
    List<Geometry> parts = new ArrayList<>();
    for (Loop loop : MeshCut.of(solid.mesh()).at(plane)) {
      Coordinate[] ring = new Coordinate[loop.size() + 1];
      for (int i = 0; i < loop.size(); i++) {
        ring[i] = new Coordinate(loop.y(i), loop.n(i));
      }
      ring[loop.size()] = ring[0].copy();
      parts.add(PLANE.createPolygon(ring));
    }
    return PLANE.buildGeometry(parts);
  }
}
