package org.midlateral.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import org.locationtech.jts.geom.Polygon;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.piece.Piece;

/**
 * Makes the closed surface of a piece: its domain is triangulated once, lifted to the inner and the
 * outer surface, and closed by a half-round rim. The contours of what is raised on it are drawn on
 * another core meanwhile.
 */
public final class SolidMesher {
  private final Piece piece;
  private final double edgeLength;
  private final double fineness;
  private final Chart chart;
  private final SizingField density;
  private final ForkJoinTask<Contours> contours;

  private SolidMesher(Piece piece, double edgeLength, double fineness) {
    this.piece = piece;
    this.edgeLength = edgeLength;
    this.fineness = fineness;
    this.chart = Chart.of(piece);
    this.density = SizingField.of(piece, chart, edgeLength, fineness);
    this.contours = ForkJoinPool.commonPool().submit(() -> Contours.of(piece, density));
  }

  /**
   * Meshes a piece.
   *
   * @param edgeLength of the triangles (mm); they are finer where the surface bends sharply
   * @throws DesignRefused where the surface folds at an edge
   */
  public static Solid mesh(Piece piece, double edgeLength) throws DesignRefused {
    return mesh(piece, edgeLength, 1);
  }

  /**
   * Meshes a piece more finely or more coarsely than usual.
   *
   * @param edgeLength of the triangles (mm)
   * @param fineness 1 as usual; less makes all triangles so much smaller, more so much larger
   * @throws DesignRefused where the surface folds at an edge
   */
  public static Solid mesh(Piece piece, double edgeLength, double fineness) throws DesignRefused {
    return begin(piece, edgeLength, fineness).end();
  }

  /**
   * Begins: its owner may go on with something else before the end.
   *
   * @param edgeLength of the triangles (mm)
   * @param fineness 1 as usual; less makes all triangles so much smaller, more so much larger
   */
  public static SolidMesher begin(Piece piece, double edgeLength, double fineness) {
    return new SolidMesher(piece, edgeLength, fineness);
  }

  /**
   * Ends it.
   *
   * @throws DesignRefused where the surface folds at an edge
   */
  public Solid end() throws DesignRefused {
    OffsetSurface surface = new OffsetSurface(piece);
    Polygon polygon = piece.outline().polygon();
    List<EdgeLoop> loops = new ArrayList<>();
    loops.add(EdgeLoop.inside(piece, surface, polygon.getExteriorRing(), chart, density));
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      loops.add(EdgeLoop.inside(piece, surface, polygon.getInteriorRingN(i), chart, density));
    }
    PlaneMesh plane = PlaneMesh.fill(loops, contours.join(), chart, density);
    Lifted points = Lifted.of(piece, surface, loops, contours.join(), plane);
    int[] refined = Refinement.of(points, plane.triangles(), chart, fineness);
    return ClosedSurface.over(piece, loops, points, refined, plane.onLoops(), edgeLength);
  }
}
