package org.midlateral.solid;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Polygon;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mesh.plane.PlaneTriangles;
import org.midlateral.piece.Piece;
import org.midlateral.recipe.Orthosis;

/** The refined domain of real pieces, in decimal arithmetic. */
class RefinedDomainTest {
  private static final double EDGE = 1.2;

  @ParameterizedTest
  @ValueSource(strings = {"bulbous-ring", "left-deficit", "covered-tip"})
  void refinedTrianglesAreDelaunayAndTileTheDomain(String sample) throws Exception {
    Orthosis made =
        Orthosis.make(Orders.read(Path.of("..", "samples", sample + ".yaml"), List.of()).order());
    for (Solid solid : made.solids()) {
      check(solid.piece());
    }
  }

  private static void check(Piece piece) throws Exception {
    Chart chart = Chart.of(piece);
    OffsetSurface surface = new OffsetSurface(piece);
    SizingField sizes = SizingField.of(piece, chart, EDGE, 1);
    List<EdgeLoop> loops = new ArrayList<>();
    Polygon outline = piece.outline().polygon();
    loops.add(EdgeLoop.inside(piece, surface, outline.getExteriorRing(), chart, sizes));
    for (int i = 0; i < outline.getNumInteriorRing(); i++) {
      loops.add(EdgeLoop.inside(piece, surface, outline.getInteriorRingN(i), chart, sizes));
    }
    Contours contours = Contours.of(piece, sizes);
    PlaneMesh plane = PlaneMesh.fill(loops, contours, chart, sizes);
    Lifted points = Lifted.of(piece, surface, loops, contours, plane);
    int size = points.size();
    PlaneTriangles before = triangles(points, chart, plane.triangles().corners());
    PlaneTriangles after =
        triangles(points, chart, Refinement.of(points, plane.triangles(), chart, 1));

    assertThat(points.size()).isGreaterThan(size);
    assertThat(after.tangled()).isEmpty();
    assertThat(after.turnedOver()).isEmpty();
    assertThat(after.boundary()).isEqualTo(before.boundary());
    assertThat(after.boundary()).hasSize(plane.onLoops());
    assertThat(after.twiceArea()).isEqualByComparingTo(before.twiceArea());
    assertThat(after.points()).hasSize(points.size());
    assertThat(after.notDelaunay()).isEmpty();
  }

  /** In the plane that keeps angles. */
  private static PlaneTriangles triangles(Lifted points, Chart chart, int[] corners) {
    double[] x = new double[points.size()];
    double[] y = new double[points.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = points.angle(i);
      y[i] = chart.mu(points.station(i));
    }
    return new PlaneTriangles(x, y, corners);
  }
}
