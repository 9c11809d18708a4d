package org.midlateral.mechanics;

import java.util.List;

/**
 * What a cross-section is worth.
 *
 * @param moments area, centroid and second moments; of slipping pieces, the sums of each one's own
 * @param torsion torsion constant (mm⁴)
 * @param shearArea for a force in the dorso-volar direction (mm²)
 * @param closed whether the wall goes all round
 */
public record Section(AreaMoments moments, double torsion, double shearArea, boolean closed) {

  /** Where a plane meets nothing. */
  public static final Section NONE = new Section(AreaMoments.NONE, 0, 0, false);

  /** The section of one piece, or of several that are bonded, from all of their loops. */
  public static Section of(List<Loop> loops) {
    AreaMoments moments = AreaMoments.of(loops);
    if (moments.area() == 0) {
      return NONE;
    }
    WallSweep wall = new WallSweep(loops);
    return new Section(moments, wall.torsion(), wall.shearArea(moments), wall.closed());
  }

  /**
   * The section of pieces that are bonded where they meet: all of their area as one, and closed
   * where each meets the next, whatever holes there are in either.
   *
   * @param pieces the loops of each
   */
  public static Section bonded(List<List<Loop>> pieces) {
    List<Loop> all = pieces.stream().flatMap(List::stream).toList();
    AreaMoments moments = AreaMoments.of(all);
    if (moments.area() == 0) {
      return NONE;
    }
    WallSweep tube = WallSweep.tube(pieces);
    return new Section(
        moments, tube.torsion(), new WallSweep(all).shearArea(moments), tube.closed());
  }

  /** This piece and another that slips on it: the sums of each one's own. */
  public Section slippingWith(Section other) {
    if (other.moments.area() == 0) {
      return this;
    }
    if (moments.area() == 0) {
      return other;
    }
    AreaMoments a = moments;
    AreaMoments b = other.moments;
    double area = a.area() + b.area();
    return new Section(
        new AreaMoments(
            area,
            (a.area() * a.y() + b.area() * b.y()) / area,
            (a.area() * a.n() + b.area() * b.n()) / area,
            a.aboutY() + b.aboutY(),
            a.aboutN() + b.aboutN(),
            a.product() + b.product()),
        torsion + other.torsion,
        shearArea + other.shearArea,
        closed || other.closed);
  }
}
