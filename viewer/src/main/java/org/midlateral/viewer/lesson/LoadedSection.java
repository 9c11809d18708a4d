package org.midlateral.viewer.lesson;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.mechanics.Loop;
import org.midlateral.mechanics.MeshCut;
import org.midlateral.mechanics.SectionPlane;
import org.midlateral.mechanics.held.HeldShell;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.solid.Solid;

/**
 * A section before the load and under it, by the finite elements: how its shape changes in its own
 * plane, the middle of its floor held still.
 *
 * @param outlines of its pieces
 */
record LoadedSection(List<SectionOutline> outlines) {

  /**
   * One closed line of it.
   *
   * @param dorsal whether it is of what closes the trough
   * @param before points y and n (mm)
   * @param under the same points under the load, in true size (mm)
   */
  record SectionOutline(boolean dorsal, Loop before, Loop under) {
    /** The farthest that a point moves (mm). */
    double farthest() {
      double most = 0;
      for (int k = 0; k < before.size(); k++) {
        most = Math.max(most, Math.hypot(under.y(k) - before.y(k), under.n(k) - before.n(k)));
      }
      return most;
    }

    /** The line with all that moves exaggerated. */
    Loop exaggerated(double times) {
      double[] yn = new double[2 * before.size()];
      for (int k = 0; k < before.size(); k++) {
        yn[2 * k] = before.y(k) + times * (under.y(k) - before.y(k));
        yn[2 * k + 1] = before.n(k) + times * (under.n(k) - before.n(k));
      }
      return new Loop(yn);
    }
  }

  LoadedSection {
    outlines = List.copyOf(outlines);
  }

  /** The section of all pieces at a station (mm). */
  static LoadedSection of(
      HeldShell held, ElasticMotion motion, DigitSurface digit, double station) {
    SectionPlane plane = SectionPlane.at(digit, station);
    HeldShell.Moved floor = held.floor(station);
    Vector3D still = motion.elastic(floor.place(), floor.moved());
    List<SectionOutline> outlines = new ArrayList<>();
    List<Solid> pieces = held.pieces();
    for (int k = 0; k < pieces.size(); k++) {
      TriangleMesh mesh = pieces.get(k).mesh();
      double[] xyz = mesh.coordinates();
      for (int v = 0; v < mesh.vertexCount(); v++) {
        Vector3D moved = motion.displacement(k, v).subtract(still);
        // In the plane alone, so that the same triangles are cut at the same places.
        Vector3D inPlane = moved.subtract(moved.dot(plane.distal()), plane.distal());
        xyz[3 * v] += inPlane.getX();
        xyz[3 * v + 1] += inPlane.getY();
        xyz[3 * v + 2] += inPlane.getZ();
      }
      List<Loop> before = MeshCut.of(mesh).at(plane);
      List<Loop> under = MeshCut.of(new TriangleMesh(xyz, mesh.triangles())).at(plane);
      for (Loop line : before) {
        outlines.add(new SectionOutline(k > 0, line, same(line, under)));
      }
    }
    return new LoadedSection(outlines);
  }

  /** All its lines with all that moves exaggerated. */
  List<Loop> exaggerated(double times) {
    return outlines.stream().map(outline -> outline.exaggerated(times)).toList();
  }

  /**
   * The line under the load that one before it becomes, its points in the same order. Where a cut
   * begins depends on where its triangles lie: the beginning is where the points lie nearest.
   */
  private static Loop same(Loop before, List<Loop> under) {
    Loop best = before;
    double least = Double.POSITIVE_INFINITY;
    for (Loop loop : under) {
      for (int first = 0; loop.size() == before.size() && first < loop.size(); first++) {
        double sum = 0;
        for (int i = 0; i < loop.size() && sum < least; i++) {
          double y = loop.y(first + i) - before.y(i);
          double n = loop.n(first + i) - before.n(i);
          sum += y * y + n * n;
        }
        if (sum < least) {
          least = sum;
          best = beginning(loop, first);
        }
      }
    }
    return best;
  }

  private static Loop beginning(Loop loop, int first) {
    double[] yn = new double[2 * loop.size()];
    for (int i = 0; i < loop.size(); i++) {
      yn[2 * i] = loop.y(first + i);
      yn[2 * i + 1] = loop.n(first + i);
    }
    return new Loop(yn);
  }

  /** The farthest that a point moves (mm). */
  double farthest() {
    return outlines.stream().mapToDouble(SectionOutline::farthest).max().orElse(0);
  }
}
