package org.midlateral.inspection;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.KnownSlices;
import org.midlateral.digit.SkinFoot;
import org.midlateral.digit.Slice;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.mesh.query.BoundingVolumeHierarchy;
import org.midlateral.mesh.query.Gap;
import org.midlateral.mesh.query.PointTriangleDistance;
import org.midlateral.piece.Piece;
import org.midlateral.solid.Solid;
import org.midlateral.work.Interruption;

/**
 * What is measured on a finished solid against what it was made to be.
 *
 * @param minWall smallest distance between inner and outer surface (mm), G3: between any two places
 *     of them where that is under {@value ErrorBudget#LEAST_WALL} of the wall asked for, which is
 *     looked for everywhere; else the smallest distance of a corner from the triangle over or under
 *     it less the chord error, by which flat triangles may come nearer than their corners: never
 *     too large
 * @param gap signed distance of the inner surface from the skin (mm), G4
 * @param gapShort largest shortfall of that distance against the gap asked for (mm), G4
 * @param gapAtSpots distance of the inner surface from the skin at the spots asked for (mm), G4
 * @param chordError largest distance of the triangles from the exact surface (mm), G9
 * @param trimError largest miss of the finished edge, on the skin, against the trim line along the
 *     flanks (mm), G2; empty for a piece without a trim line
 */
public record Conformance(
    double minWall,
    Spread gap,
    double gapShort,
    List<Double> gapAtSpots,
    double chordError,
    Optional<Double> trimError) {

  /** A place on the skin: girth from the volar midline and station (mm). */
  public record Spot(double girth, double station) {}

  public Conformance {
    gapAtSpots = List.copyOf(gapAtSpots);
  }

  /**
   * Measures a solid.
   *
   * @param tree over its mesh
   * @param leastGap no point of the inner surface may be nearer to the skin (mm)
   * @param spots of the skin, under the piece, whose gap is wanted
   */
  public static Conformance of(
      Solid solid, BoundingVolumeHierarchy tree, double leastGap, List<Spot> spots) {
    DigitSurface digit = new KnownSlices(solid.piece().digit());
    Spread gap = gap(solid, digit);
    Interruption.ifInterrupted();
    BoundingVolumeHierarchy inner = tree.inner();
    BoundingVolumeHierarchy outer = tree.outer();
    double chordError = new ChordError(solid, digit, tree).largest();
    Interruption.ifInterrupted();
    return new Conformance(
        minWall(solid, inner, outer, chordError),
        gap,
        Math.max(0, leastGap - gap.min()),
        spots.stream().map(spot -> above(solid, inner, spot)).toList(),
        chordError,
        solid.piece().dorsal() ? Optional.empty() : Optional.of(trimError(solid)));
  }

  private static double minWall(
      Solid solid,
      BoundingVolumeHierarchy inner,
      BoundingVolumeHierarchy outer,
      double chordError) {
    int n = solid.innerTriangles();
    double limit = ErrorBudget.LEAST_WALL * solid.piece().wall();
    double corners = Math.min(overCorners(inner, 0, n, n), overCorners(outer, n, 2 * n, -n));
    return inner
        .gap(outer, limit)
        .map(Gap::distance)
        .orElseGet(() -> Math.max(limit, corners - chordError));
  }

  /**
   * Smallest distance from a corner of some triangles to the one under or over each.
   *
   * @param from the first of them
   * @param to their end
   * @param other number of the other triangle less its own
   */
  private static double overCorners(BoundingVolumeHierarchy tree, int from, int to, int other) {
    PointTriangleDistance scratch = new PointTriangleDistance();
    TriangleMesh mesh = tree.mesh();
    double least = Double.POSITIVE_INFINITY;
    for (int t = from; t < to; t++) {
      for (int c = 0; c < 3; c++) {
        int v = mesh.corner(t, c);
        double d = tree.distance(mesh.x(v), mesh.y(v), mesh.z(v), t + other, scratch);
        least = Math.min(least, d);
      }
    }
    return least;
  }

  /** The gap along the skin's normal at a spot, to the triangle that the normal meets. */
  private static double above(Solid solid, BoundingVolumeHierarchy inner, Spot spot) {
    Slice slice = solid.piece().digit().slice(spot.station());
    double t = slice.angle(spot.girth());
    Vector3D foot = slice.point(t);
    Vector3D normal = slice.normal(t);
    double gap = solid.piece().gap().at(spot.girth(), spot.station());
    for (int i = 0; i < 3; i++) {
      // The nearest triangle to where the gap ought to end; then to where it does.
      int nearest = inner.closest(foot.add(normal.multiply(gap))).triangle();
      TriangleMesh mesh = solid.mesh();
      Vector3D a = mesh.vertex(mesh.corner(nearest, 0));
      Vector3D u = a.vectorTo(mesh.vertex(mesh.corner(nearest, 1)));
      Vector3D across = u.cross(a.vectorTo(mesh.vertex(mesh.corner(nearest, 2))));
      gap = foot.vectorTo(a).dot(across) / normal.dot(across);
    }
    return gap;
  }

  /** Signed distance from skin to inner surface at corners and middles of its triangles. */
  private static Spread gap(Solid solid, DigitSurface digit) {
    TriangleMesh mesh = solid.mesh();
    SkinFoot foot = new SkinFoot(digit);
    double[] at = new double[solid.innerVertices()];
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < at.length; i++) {
      foot.find(mesh.x(i), mesh.y(i), mesh.z(i), solid.skinAngle(i), solid.station(i));
      at[i] = foot.distance();
      least = Math.min(least, at[i]);
      most = Math.max(most, at[i]);
    }
    double sum = 0;
    double area = 0;
    for (int t = 0; t < solid.innerTriangles(); t++) {
      int a = mesh.corner(t, 0);
      int b = mesh.corner(t, 1);
      int c = mesh.corner(t, 2);
      double third = 1.0 / 3;
      foot.find(
          (mesh.x(a) + mesh.x(b) + mesh.x(c)) * third,
          (mesh.y(a) + mesh.y(b) + mesh.y(c)) * third,
          (mesh.z(a) + mesh.z(b) + mesh.z(c)) * third,
          middle(solid, a, b, c),
          (solid.station(a) + solid.station(b) + solid.station(c)) * third);
      least = Math.min(least, foot.distance());
      double size = mesh.area(t);
      area += size;
      sum += size * (at[a] + at[b] + at[c]) * third;
    }
    return new Spread(least, sum / area, most);
  }

  /** The skin's angle under the middle of a triangle. */
  private static double middle(Solid solid, int a, int b, int c) {
    double own = (solid.angle(a) + solid.angle(b) + solid.angle(c)) / 3;
    return solid.piece().midline().skinAngle(own);
  }

  /**
   * The crest of the rim, dropped onto the skin (raised where the piece bridges it), against the
   * trim line, along both flanks.
   */
  private static double trimError(Solid solid) {
    Piece piece = solid.piece();
    DigitSurface digit = piece.digit();
    SkinFoot skin = new SkinFoot(digit);
    CarrierFoot carrier = new CarrierFoot(piece);
    TriangleMesh mesh = solid.mesh();
    double worst = 0;
    int first = solid.crest();
    for (int k = 0; k < solid.firstLoop(); k++) {
      int v = first + k;
      double s;
      double girth;
      if (piece.bridge().uniformAt(solid.station(k))) {
        skin.find(mesh.x(v), mesh.y(v), mesh.z(v), solid.skinAngle(k), solid.station(k));
        s = skin.station();
        girth = skin.girth();
      } else {
        carrier.find(mesh.vertex(v), solid.angle(k), solid.station(k));
        s = carrier.station();
        girth = carrier.girth();
      }
      if (s > piece.outline().flankStart() && s < piece.outline().flankEnd()) {
        double trim = piece.outline().wrap() / 2 * digit.circumference(s);
        worst = Math.max(worst, Math.abs(Math.abs(girth) - trim));
      }
    }
    return worst;
  }
}
