package org.midlateral.mechanics.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.midlateral.digit.Slice;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mechanics.Joining;
import org.midlateral.mechanics.SectionPlane;

class TautBandTest {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** A rounded point on the hull may lie outside of it by so much (mm). */
  private static final double ROUNDING = 1e-9;

  /** Of the skin only what lies open is looked at; a band would hold all of it. */
  @ParameterizedTest
  @CsvSource({
    "bulbous-ring, 0.5, false",
    "bulbous-ring, 0.35, false",
    "middle-inches, 0.5, false",
    "middle-inches, 0.35, false",
    "slim-little, 0.5, true",
    "covered-tip, 0.5, true"
  })
  void allSkinLiesWithinTheBand(String sample, double wrap, boolean shell) throws Exception {
    Order order =
        Orders.read(Path.of("../samples/" + sample + ".yaml"), List.of("trough.wrap=" + wrap))
            .order();
    FingerInPieces worn =
        shell ? WornFingers.both(order, Joining.SLIPPING) : WornFingers.trough(order);
    for (double station = 5; station < worn.skin().pipAxis() + 8; station += 3) {
      TautBand band = TautBand.between(worn.skin(), worn.pieces(), station - 1, station + 1);
      SectionPlane plane = SectionPlane.at(worn.skin(), station);
      Geometry held = polygon(band, plane).buffer(ROUNDING);
      Slice slice = worn.skin().slice(station);
      for (int i = 0; i < 120; i++) {
        Coordinate skin = inPlane(plane, slice.point(2 * Math.PI * (i + 0.5) / 120 - Math.PI));
        assertThat(held.covers(FACTORY.createPoint(skin)))
            .as("%s at %.1f mm, point %d", sample, station, i)
            .isTrue();
      }
    }
  }

  private static Geometry polygon(TautBand band, SectionPlane plane) {
    List<Coordinate> ring =
        band.bends().stream().map(bend -> inPlane(plane, bend.at())).collect(Collectors.toList());
    ring.add(ring.get(0));
    return FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
  }

  private static Coordinate inPlane(SectionPlane plane, Vector3D at) {
    Vector3D off = plane.origin().vectorTo(at);
    return new Coordinate(off.getY(), off.dot(plane.dorsal()));
  }
}
