package org.midlateral.viewer.lesson;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.mechanics.RigidityBlock;
import org.midlateral.mechanics.ThreePoint;
import org.midlateral.recipe.Rigidity;
import org.midlateral.solid.Solid;
import org.midlateral.solid.TriangleMesh;
import org.midlateral.viewer.scene.PieceShape;
import org.midlateral.viewer.stage.Actor.Motion;
import org.midlateral.viewer.stage.Shape;

/**
 * One wrap of the comparison, ready to be shown: stood upright, distal end up, dorsal to the right
 * of whoever looks along -y.
 *
 * @param figures as reported
 * @param support the three forces
 * @param parts its shapes, each with the way it gives under the load
 */
record Bent(RigidityBlock.Wrap figures, ThreePoint support, List<Part> parts) {

  /**
   * A shape and its deflection.
   *
   * @param shape upright
   * @param motion at each vertex, in true size (mm)
   * @param dorsal whether it closes the trough dorsally
   */
  record Part(Shape shape, Motion motion, boolean dorsal) {}

  Bent {
    parts = List.copyOf(parts);
  }

  static Bent of(Rigidity.Curve curve, RigidityBlock.Wrap figures, DigitSurface digit) {
    BeamLine line = BeamLine.of(curve.support(), curve.profile());
    List<Part> parts = new ArrayList<>();
    for (Solid solid : curve.solids()) {
      parts.add(part(solid, digit, line));
    }
    return new Bent(figures, curve.support(), parts);
  }

  private static Part part(Solid solid, DigitSurface digit, BeamLine line) {
    TriangleMesh mesh = solid.mesh();
    double[] inner = new double[solid.innerVertices()];
    for (int i = 0; i < inner.length; i++) {
      inner[i] = solid.station(i);
    }
    double[] station = PieceShape.of(solid).spread(inner);
    double[] upright = new double[3 * mesh.vertexCount()];
    float[] motion = new float[upright.length];
    for (int v = 0; v < mesh.vertexCount(); v++) {
      put(upright, v, mesh.vertex(v));
      Vector3D moved = displacement(mesh.vertex(v), station[v], digit, line);
      motion[3 * v] = (float) -moved.getZ();
      motion[3 * v + 1] = (float) moved.getY();
      motion[3 * v + 2] = (float) moved.getX();
    }
    Shape shape = Shape.of(new TriangleMesh(upright, mesh.triangles()));
    return new Part(shape, new Motion(motion), solid.piece().dorsal());
  }

  /** A quarter turn about y: distal becomes up. */
  private static void put(double[] upright, int v, Vector3D p) {
    upright[3 * v] = -p.getZ();
    upright[3 * v + 1] = p.getY();
    upright[3 * v + 2] = p.getX();
  }

  /** Plane sections stay plane: each moves dorsally and leans with the beam's slope. */
  private static Vector3D displacement(
      Vector3D point, double station, DigitSurface digit, BeamLine line) {
    double s = Math.min(station, digit.pulpEnd() - 0.05);
    Vector3D along = digit.tangent(s);
    Vector3D dorsal = Vector3D.of(-along.getZ(), 0, along.getX());
    double height = point.subtract(digit.centre(s)).dot(dorsal);
    return dorsal.multiply(line.rise(s)).add(-line.slope(s) * height, along);
  }

  /** Where a force acts, upright, at a height over the centreline toward the back (mm). */
  static Vector3D upright(DigitSurface digit, double station, double dorsally) {
    Vector3D along = digit.tangent(station);
    Vector3D p = digit.centre(station).add(dorsally, Vector3D.of(-along.getZ(), 0, along.getX()));
    return Vector3D.of(-p.getZ(), p.getY(), p.getX());
  }
}
