package org.midlateral.mechanics.held;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.midlateral.digit.Slice;
import org.midlateral.piece.Piece;

/** The skin that the inside of a trough covers, short of its round rims. */
final class UnderTrough {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** Its ends are round, and have no width: that so far inside is taken for theirs (mm). */
  private static final double END = 0.4;

  private final Piece trough;
  private final Geometry covered;
  private final Envelope reach;

  UnderTrough(Piece trough) {
    this.trough = trough;
    covered = trough.outline().polygon().buffer(-trough.wall() / 2);
    reach = covered.getEnvelopeInternal();
  }

  /** Station at which it begins (mm). */
  double from() {
    return reach.getMinY();
  }

  /** Station at which it ends (mm). */
  double to() {
    return reach.getMaxY();
  }

  /** From which angle to which it reaches at a station, and beyond its ends as at them (rad). */
  double[] angles(double station) {
    double s = Math.max(from() + END, Math.min(to() - END, station));
    Coordinate[] line = {
      new Coordinate(reach.getMinX() - 1, s), new Coordinate(reach.getMaxX() + 1, s)
    };
    Envelope across = FACTORY.createLineString(line).intersection(covered).getEnvelopeInternal();
    Slice slice = trough.digit().slice(s);
    return new double[] {slice.angle(across.getMinX()), slice.angle(across.getMaxX())};
  }
}
