package org.midlateral.inspection;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.Slice;
import org.midlateral.piece.Piece;
import org.midlateral.solid.OffsetSurface;

/**
 * The point nearest to a point in space on the skin raised where a piece bridges it. The skin's own
 * nearest point leaps over the waist there. Holds what it found last.
 */
final class CarrierFoot {
  private static final int MOST_STEPS = 40;
  private static final double LAST_STEP = 1e-6;

  private final Piece piece;
  private final OffsetSurface carrier;
  private final double[] jet = new double[18];
  private final double[] place = new double[6];
  private double angle;
  private double station;

  CarrierFoot(Piece piece) {
    this.piece = piece;
    this.carrier = new OffsetSurface(piece.withGap(piece.bridge()));
  }

  /**
   * Finds the foot, by least-squares steps with the skin's own slopes.
   *
   * @param firstAngle from the piece's own midline, where to start (rad)
   * @param firstStation where to start (mm)
   */
  void find(Vector3D point, double firstAngle, double firstStation) {
    angle = firstAngle;
    station = firstStation;
    for (int i = 0; i < MOST_STEPS; i++) {
      Slice slice = piece.digit().slice(station);
      slice.jet(piece.midline().skinAngle(angle), jet);
      carrier.at(slice, angle, piece.bridge().uniformAt(station), place, 0);
      Vector3D normal = Vector3D.of(place[3], place[4], place[5]);
      Vector3D off = Vector3D.of(place[0], place[1], place[2]).vectorTo(point);
      Vector3D along = off.subtract(normal.multiply(off.dot(normal)));
      Vector3D byAngle = Vector3D.of(jet[3], jet[4], jet[5]);
      Vector3D byStation = Vector3D.of(jet[6], jet[7], jet[8]);
      double tt = byAngle.normSq();
      double ts = byAngle.dot(byStation);
      double ss = byStation.normSq();
      double det = tt * ss - ts * ts;
      angle += (byAngle.dot(along) * ss - byStation.dot(along) * ts) / det;
      station += (byStation.dot(along) * tt - byAngle.dot(along) * ts) / det;
      if (along.norm() < LAST_STEP) {
        break;
      }
    }
  }

  /** Station of the foot (mm). */
  double station() {
    return station;
  }

  /** Girth of the foot from the volar midline (mm). */
  double girth() {
    return piece.digit().slice(station).girth(piece.midline().skinAngle(angle));
  }
}
