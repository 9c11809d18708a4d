package org.midlateral.document.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.recipe.Orthosis;

class UnrolledTest {

  /**
   * A lattice over (u, v) in [-1, 1] by [0, 1], lifted by a function to x, y, z, girth, station.
   */
  private static MidSurface lifted(java.util.function.BiFunction<Double, Double, double[]> lift) {
    int across = 40;
    int along = 60;
    double[] xyz = new double[3 * (across + 1) * (along + 1)];
    double[] plane = new double[2 * (across + 1) * (along + 1)];
    int[] corners = new int[6 * across * along];
    int n = 0;
    for (int j = 0; j <= along; j++) {
      for (int i = 0; i <= across; i++) {
        double[] p = lift.apply(2.0 * i / across - 1, (double) j / along);
        int v = j * (across + 1) + i;
        System.arraycopy(p, 0, xyz, 3 * v, 3);
        System.arraycopy(p, 3, plane, 2 * v, 2);
        if (i < across && j < along) {
          int up = v + across + 1;
          for (int corner : new int[] {v, v + 1, up + 1, v, up + 1, up}) {
            corners[n++] = corner;
          }
        }
      }
    }
    return new MidSurface(new TriangleMesh(xyz, corners), v -> plane[2 * v], v -> plane[2 * v + 1]);
  }

  /** Closed form: a half cylinder of radius 10 and length 70 is a rectangle of 10π by 70. */
  @Test
  void aHalfCylinderUnrollsToItsRectangle() {
    MidSurface half =
        lifted(
            (u, v) -> {
              double t = u * Math.PI / 2;
              return new double[] {70 * v, 10 * Math.sin(t), -10 * Math.cos(t), 9 * t, 70 * v};
            });
    Envelope box = Unrolled.of(half).outline().getEnvelopeInternal();
    // The mesh's chords are short of the arc by 1 part in 4000 at 40 parts of a half circle.
    assertThat(box.getWidth()).isCloseTo(10 * Math.PI, within(0.01));
    assertThat(box.getHeight()).isCloseTo(70, within(0.001));
  }

  /**
   * Closed form: a half cone between radii 12 and 7 over a length of 60 is a sector of a ring; its
   * radii are the slant distances from the apex, its angle is π sin(half apex angle).
   */
  @Test
  void aHalfConeUnrollsToItsSector() {
    double slope = 5.0 / 60;
    double slant = Math.hypot(1, slope);
    double apex = 12 / slope;
    MidSurface half =
        lifted(
            (u, v) -> {
              double t = u * Math.PI / 2;
              double r = 12 - 5 * v;
              return new double[] {60 * v, r * Math.sin(t), -r * Math.cos(t), r * t, 60 * v};
            });
    Unrolled flat = Unrolled.of(half);
    double angle = Math.PI * slope / slant;
    double outer = apex * slant;
    double inner = outer - 60 * slant;
    assertThat(flat.outline().getArea())
        .isCloseTo(angle / 2 * (outer * outer - inner * inner), within(0.5));
    // Widths of the two ends: chords of the sector.
    Coordinate[] edge = flat.outline().getCoordinates();
    assertThat(flat.outline().getEnvelopeInternal().getWidth())
        .isCloseTo(2 * outer * Math.sin(angle / 2), within(0.02));
    double lowest = Double.MAX_VALUE;
    double highest = -Double.MAX_VALUE;
    for (Coordinate c : edge) {
      lowest = Math.min(lowest, c.y);
      highest = Math.max(highest, c.y);
    }
    // From the corners of the wide end to the crown of the narrow one.
    assertThat(highest - lowest).isCloseTo(outer - inner * Math.cos(angle / 2), within(0.02));
    assertThat(flat.mostStretched().stretch()).isCloseTo(0, within(1e-3));
  }

  /** A sphere's cap cannot be laid flat; the least distortion of a small one is known. */
  @Test
  void aBulgeMustStretchInTheMiddleOrGatherAtTheEdge() {
    double radius = 40;
    MidSurface cap =
        lifted(
            (u, v) -> {
              double x = 16 * u;
              double y = 32 * v - 16;
              double z = Math.sqrt(radius * radius - x * x - y * y);
              return new double[] {y, x, -z, x, y};
            });
    Unrolled flat = Unrolled.of(cap);
    assertThat(flat.mostStretched().stretch()).isBetween(0.005, 0.06);
    assertThat(flat.mostGathered().stretch()).isBetween(-0.06, -0.005);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"bulbous-ring", "covered-tip", "left-deficit", "middle-inches", "slim-little"})
  void theFlatAreaIsTheMidSurfacesArea(String sample) throws Exception {
    var order = Orders.read(Path.of("../samples/" + sample + ".yaml"), List.of()).order();
    var orthosis = Orthosis.make(order);
    MidSurface middle = MidSurface.of(orthosis.trough());
    Unrolled flat = Unrolled.of(middle);
    assertThat(flat.outline().isValid()).isTrue();
    assertThat(flat.outline().getArea() / area(middle.mesh())).isCloseTo(1, within(0.01));
  }

  private static double area(TriangleMesh mesh) {
    double area = 0;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vector3D a = mesh.vertex(mesh.corner(t, 0));
      Vector3D ab = a.vectorTo(mesh.vertex(mesh.corner(t, 1)));
      Vector3D ac = a.vectorTo(mesh.vertex(mesh.corner(t, 2)));
      area += ab.cross(ac).norm() / 2;
    }
    return area;
  }
}
