package org.midlateral.viewer.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.measurement.Material;
import org.midlateral.viewer.scene.Made;
import org.midlateral.viewer.scene.PieceShape;

/**
 * The section of a design at one station.
 *
 * @param station mm from the web
 * @param circumference of the skin (mm)
 * @param skin the finger's outline
 * @param midlateral y and z of the two mid-lateral points, on +y first (mm)
 * @param liner of the trough, lying on the skin; empty where there is none
 * @param cuts of the pieces that the plane meets
 * @param gaps between skin and pieces, at a few places
 */
public record Section(
    double station,
    double circumference,
    Loop skin,
    List<double[]> midlateral,
    Optional<Loop> liner,
    List<Cut> cuts,
    List<GapLine> gaps) {
  private static final int AROUND = 180;
  private static final double STEP = 1e-4;
  private static final double[] TROUGH_GAPS = {0, 1.05, -1.05};

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
    gaps = List.copyOf(gaps);
  }

  /** The part of a piece that is met, if it is. */
  public Optional<Cut> cut(boolean dorsal) {
    return cuts.stream().filter(cut -> cut.piece().isDorsal() == dorsal).findFirst();
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
    double[] radial = point(slice, slice.angle(quarter), plane);
    double[] ulnar = point(slice, slice.angle(-quarter), plane);
    return new Section(
        at,
        slice.circumference(),
        skin,
        List.of(radial, ulnar),
        liner(view, slice, plane),
        cuts,
        gaps(cuts, slice, plane));
  }

  /** The liner as it lies on the skin under the trough. */
  private static Optional<Loop> liner(Made.View view, Slice slice, CutPlane plane) {
    double thickness = view.orthosis().order().design().trough().liner();
    Outline outline = view.orthosis().trough().piece().outline();
    boolean covered =
        slice.station() >= outline.flankStart() && slice.station() <= outline.distal();
    if (thickness == 0 || !covered) {
      return Optional.empty();
    }
    double reach =
        slice.angle(view.orthosis().order().design().trough().wrap() * slice.circumference() / 2);
    int n = AROUND / 2;
    double[] points = new double[4 * (n + 1)];
    for (int i = 0; i <= n; i++) {
      double t = -reach + 2 * reach * i / n;
      double[] on = point(slice, t, plane);
      double[] out = outward(slice, t, plane);
      points[2 * i] = on[0];
      points[2 * i + 1] = on[1];
      int back = 2 * (2 * n + 1 - i);
      points[back] = on[0] + thickness * out[0];
      points[back + 1] = on[1] + thickness * out[1];
    }
    return Optional.of(new Loop(points));
  }

  private static List<GapLine> gaps(List<Cut> cuts, Slice slice, CutPlane plane) {
    List<GapLine> gaps = new ArrayList<>();
    for (Cut cut : cuts) {
      double middle = cut.piece().isDorsal() ? Math.PI : 0;
      for (double off : cut.piece().isDorsal() ? new double[] {0} : TROUGH_GAPS) {
        double[] on = point(slice, middle + off, plane);
        double[] out = outward(slice, middle + off, plane);
        ahead(cut.loops(), on, out)
            .ifPresent(gap -> gaps.add(new GapLine(on[0], on[1], out[0], out[1], gap)));
      }
    }
    return gaps;
  }

  /** How far from the skin its normal first meets a piece (mm). */
  private static OptionalDouble ahead(List<Loop> loops, double[] on, double[] out) {
    double least = Double.POSITIVE_INFINITY;
    for (Loop loop : loops) {
      least = Math.min(least, loop.ahead(on[0], on[1], out[0], out[1]));
    }
    return Double.isFinite(least) ? OptionalDouble.of(least) : OptionalDouble.empty();
  }

  /** Outward normal of the skin in the plane: y, z. */
  private static double[] outward(Slice slice, double t, CutPlane plane) {
    double[] before = point(slice, t - STEP, plane);
    double[] after = point(slice, t + STEP, plane);
    double dy = after[0] - before[0];
    double dz = after[1] - before[1];
    double length = Math.hypot(dy, dz);
    return new double[] {dz / length, -dy / length};
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
