package org.midlateral.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.midlateral.RingPieces;
import org.midlateral.digit.Slice;
import org.midlateral.piece.Piece;

/** The rim's crest comes to stand over the finished edge: in closed form on a round finger. */
class RimSeatTest {
  private static final double RIM = StraightTrough.WALL / 2;
  private static final Piece STRAIGHT = StraightTrough.of(40);

  /** Along the finger the rim's centre lies r beside the edge's radius, at the mid radius R. */
  @Test
  void alongTheFingerItsAngleIsShortByTheRimsRadius() {
    RimSeat seat = new RimSeat(STRAIGHT, new OffsetSurface(STRAIGHT));
    double back = Math.atan(RIM / StraightTrough.MIDDLE);
    for (double girth = 2; girth < 20; girth += 1.3) {
      assertThat(seat.find(girth, 20, new double[] {0, 1})).isTrue();
      assertThat(seat.angle()).isCloseTo(girth / StraightTrough.RADIUS - back, within(1e-8));
      assertThat(seat.station()).isCloseTo(20, within(1e-8));
      assertThat(seat.find(-girth, 20, new double[] {0, -1})).isTrue();
      assertThat(seat.angle()).isCloseTo(back - girth / StraightTrough.RADIUS, within(1e-8));
    }
  }

  /** Round the finger it stands back by the rim's radius. */
  @Test
  void roundTheFingerItsStationIsShortByTheRimsRadius() {
    RimSeat seat = new RimSeat(STRAIGHT, new OffsetSurface(STRAIGHT));
    for (double girth = -12; girth <= 12; girth += 1.7) {
      assertThat(seat.find(girth, 45, new double[] {-1, 0})).isTrue();
      assertThat(seat.station()).isCloseTo(45 - RIM, within(1e-8));
      assertThat(seat.angle()).isCloseTo(girth / StraightTrough.RADIUS, within(1e-8));
      assertThat(seat.find(girth, 5, new double[] {1, 0})).isTrue();
      assertThat(seat.station()).isCloseTo(5 + RIM, within(1e-8));
    }
  }

  /** Whichever way the edge runs, the crest has the edge's own angle and station. */
  @Test
  void aslantTheCrestStandsOverTheEdge() {
    RimSeat seat = new RimSeat(STRAIGHT, new OffsetSurface(STRAIGHT));
    double girth = 5;
    for (double turn = 0; turn < 2 * Math.PI; turn += 0.1) {
      assertThat(seat.find(girth, 25, new double[] {Math.cos(turn), Math.sin(turn)})).isTrue();
      Vector3D crest = crest(seat.frame(), RIM);
      assertThat(Math.atan2(crest.getY(), -crest.getZ()))
          .isCloseTo(girth / StraightTrough.RADIUS, within(1e-7));
      assertThat(crest.getX()).isCloseTo(25, within(1e-6));
    }
  }

  /**
   * The edges of real pieces, on a finger that bulges and is bent: the same by the skin's normal,
   * or where a piece bridges the skin by that of the skin so raised.
   */
  @Test
  void onRealPiecesTheCrestStandsOnTheSkinsNormal() throws Exception {
    double bent = Math.toRadians(25);
    for (Piece piece : List.of(RingPieces.trough(bent), RingPieces.dorsalShell(bent))) {
      RimSeat seat = new RimSeat(piece, new OffsetSurface(piece));
      Coordinate[] ring = piece.outline().polygon().getExteriorRing().getCoordinates();
      for (int i = 0; i + 1 < ring.length; i++) {
        double[] along = {ring[i + 1].x - ring[i].x, ring[i + 1].y - ring[i].y};
        double size = Math.hypot(along[0], along[1]);
        along[0] /= size;
        along[1] /= size;
        double girth = (ring[i].x + ring[i + 1].x) / 2;
        double station = (ring[i].y + ring[i + 1].y) / 2;
        assertThat(seat.find(girth, station, along)).isTrue();
        assertOverEdge(piece, seat.frame(), girth, station);
      }
    }
  }

  private static void assertOverEdge(Piece piece, double[] frame, double girth, double station) {
    Slice slice = piece.digit().slice(station);
    // The skin, raised where the piece bridges it.
    OffsetSurface raised = new OffsetSurface(piece.withGap(piece.bridge()));
    double[] place = new double[6];
    raised.at(slice, piece.midline().angle(slice, girth), false, place, 0);
    Vector3D skin = vector(place, 0);
    Vector3D out = vector(place, 3);
    Vector3D up = skin.vectorTo(crest(frame, piece.wall() / 2));
    String where = String.format(Locale.ROOT, "%s at %.1f, %.1f", piece.name(), girth, station);

    assertThat(up.cross(out).norm()).as(where).isLessThan(1e-6);
    assertThat(up.dot(out)).as(where).isPositive();
    assertThat(vector(frame, 3).norm()).isCloseTo(1, within(1e-12));
    assertThat(vector(frame, 6).norm()).isCloseTo(1, within(1e-12));
    assertThat(vector(frame, 3).dot(vector(frame, 6))).isCloseTo(0, within(1e-12));
  }

  private static Vector3D crest(double[] frame, double radius) {
    return vector(frame, 0).add(radius, vector(frame, 3)).add(radius, vector(frame, 6));
  }

  private static Vector3D vector(double[] of, int at) {
    return Vector3D.of(of[at], of[at + 1], of[at + 2]);
  }
}
