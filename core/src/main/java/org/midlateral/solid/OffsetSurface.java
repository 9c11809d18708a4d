package org.midlateral.solid;

import org.midlateral.digit.Slice;
import org.midlateral.piece.GapField;
import org.midlateral.piece.Midline;
import org.midlateral.piece.Piece;

/**
 * The inner surface of a piece, exactly: skin + gap along the skin's normal, with the inner
 * surface's own normal. Not for use by two threads at once.
 */
public final class OffsetSurface {
  private final GapField gap;
  private final Midline midline;
  private final double[] skin = new double[18];
  private final double[] gapJet = new double[3];
  private final double[] n = new double[3];
  private final double[] byAngle = new double[3];
  private final double[] byStation = new double[3];

  public OffsetSurface(Piece piece) {
    this.gap = piece.gap();
    this.midline = piece.midline();
  }

  /**
   * Inner point and unit normal, pointing away from the skin.
   *
   * @param own angle from the piece's own midline (rad)
   * @param uniform whether the gap is the same all round at this slice
   * @param point receives x, y, z of the inner point (mm) and of the normal, at 6 * index
   */
  public void at(Slice slice, double own, boolean uniform, double[] point, int index) {
    double t = midline.skinAngle(own);
    slice.jet(t, skin);
    cross(skin, 3, skin, 6, n);
    double size = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
    for (int i = 0; i < 3; i++) {
      n[i] /= size;
    }
    gap.jet(uniform ? 0 : slice.girth(t), slice.station(), gapJet);
    int at = 6 * index;
    for (int i = 0; i < 3; i++) {
      point[at + i] = skin[i] + gapJet[0] * n[i];
      point[at + 3 + i] = n[i];
    }
    if (gapJet[1] != 0 || gapJet[2] != 0) {
      double gapByAngle = gapJet[1] * slice.girthByAngle(t);
      double gapByStation = gapJet[2] + gapJet[1] * slice.girthAlongStation(t);
      tilt(size, gapByAngle, gapByStation, point, at + 3);
    }
  }

  /**
   * How much the inner or the outer surface, whichever more, bends between two places of it: the
   * difference of the points times that of the normals, eight times what a chord misses at its
   * middle (mm); see {@link Refinement}.
   *
   * @param frame points and normals
   * @param i of the first one, where its six numbers begin
   * @param j of the second one
   */
  static double bend(double[] frame, int i, int j, double wall) {
    double qn = 0;
    double nn = 0;
    for (int k = 0; k < 3; k++) {
      double dn = frame[j + 3 + k] - frame[i + 3 + k];
      qn += (frame[j + k] - frame[i + k]) * dn;
      nn += dn * dn;
    }
    return Math.max(Math.abs(qn), Math.abs(qn + wall * nn));
  }

  /** Normal of the offset surface where the gap has a slope: Q_t x Q_s. */
  private void tilt(double size, double gapByAngle, double gapByStation, double[] out, int at) {
    normalDerivative(9, 12, size, byAngle);
    normalDerivative(12, 15, size, byStation);
    for (int i = 0; i < 3; i++) {
      byAngle[i] = skin[3 + i] + gapByAngle * n[i] + gapJet[0] * byAngle[i];
      byStation[i] = skin[6 + i] + gapByStation * n[i] + gapJet[0] * byStation[i];
    }
    double[] tilted = new double[3];
    cross(byAngle, 0, byStation, 0, tilted);
    double length =
        Math.sqrt(tilted[0] * tilted[0] + tilted[1] * tilted[1] + tilted[2] * tilted[2]);
    for (int i = 0; i < 3; i++) {
      out[at + i] = tilted[i] / length;
    }
  }

  /**
   * Derivative of the skin's unit normal: that of P_t x P_s, less its part along the normal.
   *
   * @param dt place of the derivative of P_t in the skin's jet
   * @param ds place of the derivative of P_s
   */
  private void normalDerivative(int dt, int ds, double size, double[] out) {
    double[] first = new double[3];
    cross(skin, dt, skin, 6, first);
    cross(skin, 3, skin, ds, out);
    double along = 0;
    for (int i = 0; i < 3; i++) {
      out[i] = (out[i] + first[i]) / size;
      along += out[i] * n[i];
    }
    for (int i = 0; i < 3; i++) {
      out[i] -= along * n[i];
    }
  }

  private static void cross(double[] a, int i, double[] b, int j, double[] out) {
    out[0] = a[i + 1] * b[j + 2] - a[i + 2] * b[j + 1];
    out[1] = a[i + 2] * b[j] - a[i] * b[j + 2];
    out[2] = a[i] * b[j + 1] - a[i + 1] * b[j];
  }
}
