package org.midlateral.mechanics.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.midlateral.piece.Piece;
import org.midlateral.solid.Solid;
import org.midlateral.work.Interruption;

/**
 * Pieces on a finger before anything holds them: where they may touch the skin and each other, and
 * where bands may lie. Immutable.
 */
final class Fitting {
  /** Bands are laid in strips about so wide (mm). */
  private static final double STRIP = 2.5;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final FingerInPieces worn;
  private final PreparedGeometry trough;
  private final List<Solid> solids;
  private final List<SkinPatch> patches;
  private final List<SkinPatch> overlaps;
  private final List<Double> overlapGaps;
  private final List<TautBand> bands;
  private final List<Lever> patchLevers;
  private final List<Lever> stripLevers;

  /**
   * What a turning of the joint by a moves a place along a direction: even (cos a - 1) + odd sin a;
   * both 0 on the part of the finger that does not turn.
   *
   * @param even mm
   * @param odd mm
   */
  record Lever(double even, double odd) {
    private static final Lever NONE = new Lever(0, 0);

    private Lever plus(Vector3D arm, Vector3D direction) {
      return new Lever(
          even + direction.getX() * arm.getX() + direction.getZ() * arm.getZ(),
          odd + direction.getX() * arm.getZ() - direction.getZ() * arm.getX());
    }
  }

  /**
   * Looks where pieces may touch.
   *
   * @param solids the pieces as they are meshed for computing
   * @param patch length and width of a patch of skin (mm)
   */
  Fitting(FingerInPieces worn, List<Solid> solids, double patch) {
    this.worn = worn;
    trough = PreparedGeometryFactory.prepare(worn.pieces().get(0).outline().polygon());
    this.solids = List.copyOf(solids);
    List<SkinPatch> onSkin =
        new ArrayList<>(
            SkinPatch.of(0, solids.get(0), SkinVertex.of(solids.get(0)), patch, v -> true));
    overlaps = new ArrayList<>();
    if (solids.size() > 1) {
      List<SkinVertex> inside = SkinVertex.of(solids.get(1));
      onSkin.addAll(SkinPatch.of(1, solids.get(1), inside, patch, v -> !overTrough(v)));
      if (worn.apart()) {
        overlaps.addAll(SkinPatch.of(1, solids.get(1), inside, patch, this::overTrough));
      }
    }
    patches = List.copyOf(onSkin);
    overlapGaps = overlaps.stream().map(this::gap).toList();
    bands = bands();
    Vector3D centre = worn.centre();
    patchLevers = patches.stream().map(p -> lever(p, centre)).toList();
    stripLevers = bands.stream().map(b -> lever(b, centre)).toList();
  }

  private Lever lever(SkinPatch patch, Vector3D centre) {
    Lever lever = Lever.NONE;
    for (SkinVertex v : patch.parts()) {
      if (worn.distal(v.station())) {
        lever = lever.plus(centre.vectorTo(v.skin()), v.out().multiply(patch.share(v)));
      }
    }
    return lever;
  }

  private Lever lever(TautBand band, Vector3D centre) {
    Lever lever = Lever.NONE;
    if (worn.distal(band.station())) {
      for (TautBand.BandBend bend : band.bends()) {
        if (bend.piece() < 0) {
          lever = lever.plus(centre.vectorTo(bend.at()), bend.pull().negate());
        }
      }
    }
    return lever;
  }

  private boolean overTrough(SkinVertex v) {
    return trough.contains(FACTORY.createPoint(new Coordinate(v.girth(), v.station())));
  }

  FingerInPieces worn() {
    return worn;
  }

  /** The pieces as they are meshed for computing. */
  List<Solid> solids() {
    return solids;
  }

  /** Where a piece may touch skin, the trough's first. */
  List<SkinPatch> patches() {
    return patches;
  }

  /** Where a dorsal shell that is apart may touch the trough. */
  List<SkinPatch> overlaps() {
    return overlaps;
  }

  /** Of each patch, outward. */
  List<Lever> patchLevers() {
    return patchLevers;
  }

  /** Of each strip, against the pull of the band on skin. */
  List<Lever> stripLevers() {
    return stripLevers;
  }

  /** At each place where they may touch, the gap between the two pieces (mm). */
  List<Double> overlapGaps() {
    return overlapGaps;
  }

  private double gap(SkinPatch overlap) {
    Piece volar = worn.pieces().get(0);
    double[] jet = new double[3];
    double sum = 0;
    for (SkinVertex v : overlap.parts()) {
      volar.gap().jet(v.girth(), v.station(), jet);
      // A sloping wall is thicker along the skin's normal than along its own.
      double wall = volar.wall() * Math.sqrt(1 + jet[1] * jet[1] + jet[2] * jet[2]);
      sum += overlap.share(v) * (v.gap() - jet[0] - wall);
    }
    return Math.max(0, sum);
  }

  /** Strips of bands, from proximal. */
  List<TautBand> strips() {
    return bands;
  }

  private List<TautBand> bands() {
    double from = worn.pieces().get(0).outline().flankStart();
    double to = Math.min(worn.pieces().get(0).outline().distal(), worn.skin().tip());
    int n = (int) Math.ceil((to - from) / STRIP);
    Interruption asked = Interruption.current();
    return IntStream.range(0, n)
        .parallel()
        .mapToObj(
            k -> {
              asked.check();
              double low = from + (to - from) * k / n;
              double high = from + (to - from) * (k + 1) / n;
              return TautBand.between(worn.skin(), worn.pieces(), low, high);
            })
        .toList();
  }
}
