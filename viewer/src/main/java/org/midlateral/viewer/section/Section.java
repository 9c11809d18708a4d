package org.midlateral.viewer.section;

import java.util.ArrayList;
import java.util.List;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.measurement.Material;
import org.midlateral.viewer.scene.Made;
import org.midlateral.viewer.scene.PieceShape;

/**
 * The section of a design at one station.
 *
 * @param station mm from the web
 * @param skin the finger's outline
 * @param midlateral y and z of the two mid-lateral points, on +y first (mm)
 * @param cuts of the pieces that the plane meets
 */
public record Section(double station, Loop skin, List<double[]> midlateral, List<Cut> cuts) {
  private static final int AROUND = 180;

  /**
   * One piece's part of it.
   *
   * @param piece which
   * @param loops its outline
   * @param moments its own
   * @param rigidity EI about the medio-lateral axis (N·mm²)
   * @param leastGap least distance from its outline to the skin (mm)
   */
  public record Cut(
      PieceShape piece, List<Loop> loops, AreaMoments moments, double rigidity, double leastGap) {
    public Cut {
      loops = List.copyOf(loops);
    }
  }

  public Section {
    midlateral = List.copyOf(midlateral);
    cuts = List.copyOf(cuts);
  }

  /** The section of a design; the station is held on the finger. */
  public static Section of(Made.View view, double station) {
    DigitSurface digit = view.orthosis().digit();
    double at = Math.min(station, digit.pulpEnd() - 0.05);
    CutPlane plane = CutPlane.of(digit, at);
    Slice slice = digit.slice(at);
    Loop skin = skin(slice, plane);
    double modulus = Material.of(view.orthosis().order().design().material()).modulus();
    List<Cut> cuts = new ArrayList<>();
    for (PieceShape piece : view.pieces()) {
      List<Loop> loops = Slicer.cut(piece.shape(), plane);
      if (!loops.isEmpty()) {
        AreaMoments moments = AreaMoments.of(loops);
        cuts.add(new Cut(piece, loops, moments, modulus * moments.inertia(), gap(loops, skin)));
      }
    }
    double quarter = slice.circumference() / 4;
    return new Section(
        at,
        skin,
        List.of(
            point(slice, slice.angle(quarter), plane), point(slice, slice.angle(-quarter), plane)),
        cuts);
  }

  private static Loop skin(Slice slice, CutPlane plane) {
    double[] points = new double[2 * AROUND];
    for (int i = 0; i < AROUND; i++) {
      double[] p = point(slice, 2 * Math.PI * i / AROUND - Math.PI, plane);
      points[2 * i] = p[0];
      points[2 * i + 1] = p[1];
    }
    return new Loop(points);
  }

  private static double[] point(Slice slice, double t, CutPlane plane) {
    double[] jet = new double[18];
    slice.jet(t, jet);
    return new double[] {jet[1], plane.dorsal(jet[0], jet[1], jet[2])};
  }

  private static double gap(List<Loop> loops, Loop skin) {
    double least = Double.POSITIVE_INFINITY;
    for (Loop loop : loops) {
      for (int i = 0; i < loop.size(); i++) {
        least = Math.min(least, skin.distance(loop.at(i, 0), loop.at(i, 1)));
      }
    }
    return least;
  }
}
