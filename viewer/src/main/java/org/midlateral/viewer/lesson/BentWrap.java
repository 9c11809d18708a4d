package org.midlateral.viewer.lesson;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.mechanics.RigidityBlock;
import org.midlateral.mechanics.ThreePoint;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.recipe.rigidity.Rigidity;
import org.midlateral.solid.Solid;
import org.midlateral.viewer.render.SceneItem.VertexDisplacements;
import org.midlateral.viewer.render.SurfaceShape;
import org.midlateral.viewer.scene.PieceShape;

/**
 * One wrap of the comparison, ready to be shown: stood upright, distal end up, dorsal to the right
 * of whoever looks along -y.
 *
 * @param figures as reported
 * @param support the three forces
 * @param parts its shapes, each with the way it gives under the load
 * @param farthest largest displacement of a point (mm)
 */
record BentWrap(RigidityBlock.Wrap figures, ThreePoint support, List<Part> parts, double farthest) {

  /**
   * A shape and its deflection.
   *
   * @param shape upright
   * @param motion at each vertex, in true size (mm)
   * @param dorsal whether it closes the trough dorsally
   */
  record Part(SurfaceShape shape, VertexDisplacements displacements, boolean dorsal) {}

  /** How far a vertex of a mesh moves (mm). */
  private interface Displacement {
    Vector3D of(int vertex);
  }

  BentWrap {
    parts = List.copyOf(parts);
  }

  /**
   * As the finite elements found, on the meshes that they were computed on.
   *
   * @param curve with its finite elements
   * @param left whether the hand is a left one, whose pieces are mirror images
   */
  static BentWrap byElements(Rigidity.Curve curve, RigidityBlock.Wrap figures, boolean left) {
    ElasticMotion motion = ElasticMotion.of(curve.held().orElseThrow(), curve.support());
    List<Solid> pieces = curve.held().orElseThrow().pieces();
    double side = left ? -1 : 1;
    Gathered all = new Gathered();
    for (int k = 0; k < pieces.size(); k++) {
      int piece = k;
      TriangleMesh mesh = pieces.get(k).mesh();
      all.add(
          left ? mesh.mirrored() : mesh,
          pieces.get(k).piece().dorsal(),
          v -> {
            Vector3D moved = motion.displacement(piece, v);
            return Vector3D.of(moved.getX(), side * moved.getY(), moved.getZ());
          });
    }
    return new BentWrap(figures, curve.support(), all.parts, all.farthest);
  }

  /** As a beam: plane sections stay plane. */
  static BentWrap asBeam(Rigidity.Curve curve, RigidityBlock.Wrap figures, DigitSurface digit) {
    BeamDeflection line = BeamDeflection.of(curve.support(), curve.profile());
    Gathered all = new Gathered();
    for (Solid solid : curve.solids()) {
      double[] inner = new double[solid.innerVertices()];
      for (int i = 0; i < inner.length; i++) {
        inner[i] = solid.station(i);
      }
      double[] station = PieceShape.of(solid).spread(inner);
      TriangleMesh mesh = solid.mesh();
      all.add(mesh, solid.piece().dorsal(), v -> leaning(mesh.vertex(v), station[v], digit, line));
    }
    return new BentWrap(figures, curve.support(), all.parts, all.farthest);
  }

  /** Each section moves dorsally and leans with the beam's slope. */
  private static Vector3D leaning(
      Vector3D point, double station, DigitSurface digit, BeamDeflection line) {
    double s = Math.min(station, digit.pulpEnd() - 0.05);
    Vector3D along = digit.tangent(s);
    Vector3D dorsal = Vector3D.of(-along.getZ(), 0, along.getX());
    double height = point.subtract(digit.centre(s)).dot(dorsal);
    return dorsal.multiply(line.rise(s)).add(-line.slope(s) * height, along);
  }

  /** The parts as they are stood up one by one. */
  private static final class Gathered {
    private final List<Part> parts = new ArrayList<>();
    private double farthest;

    void add(TriangleMesh mesh, boolean dorsal, Displacement displacement) {
      double[] upright = new double[3 * mesh.vertexCount()];
      float[] motion = new float[upright.length];
      for (int v = 0; v < mesh.vertexCount(); v++) {
        Vector3D place = stood(mesh.vertex(v));
        Vector3D moved = displacement.of(v);
        farthest = Math.max(farthest, moved.norm());
        Vector3D along = stood(moved);
        for (int k = 0; k < 3; k++) {
          upright[3 * v + k] = place.toArray()[k];
          motion[3 * v + k] = (float) along.toArray()[k];
        }
      }
      SurfaceShape shape = SurfaceShape.of(new TriangleMesh(upright, mesh.triangles()));
      parts.add(new Part(shape, new VertexDisplacements(motion), dorsal));
    }
  }

  /** A quarter turn about y: distal becomes up. */
  private static Vector3D stood(Vector3D v) {
    return Vector3D.of(-v.getZ(), v.getY(), v.getX());
  }

  /** Where a force acts, upright, at a height over the centreline toward the back (mm). */
  static Vector3D upright(DigitSurface digit, double station, double dorsally) {
    Vector3D along = digit.tangent(station);
    return stood(digit.centre(station).add(dorsally, Vector3D.of(-along.getZ(), 0, along.getX())));
  }
}
