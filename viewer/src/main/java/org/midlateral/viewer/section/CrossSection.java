package org.midlateral.viewer.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.measurement.Material;
import org.midlateral.mechanics.Joining;
import org.midlateral.mechanics.Loop;
import org.midlateral.mechanics.Section;
import org.midlateral.mechanics.SectionPlane;
import org.midlateral.mechanics.Sections;
import org.midlateral.piece.BridgedStretch;
import org.midlateral.piece.Piece;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.PieceShape;

/**
 * The section of a design at one station.
 *
 * @param station mm from the web
 * @param circumference of the skin (mm)
 * @param skin the finger's outline
 * @param midlateral y and n of the two mid-lateral points, on +y first (mm)
 * @param liner of the trough, lying on the skin; empty where there is none
 * @param cuts of the pieces that the plane meets
 * @param gaps between skin and pieces, at a few places
 * @param bonded both pieces as one section; empty unless both are met
 * @param slipping both pieces each for itself; empty unless both are met
 */
public record CrossSection(
    double station,
    double circumference,
    Loop skin,
    List<double[]> midlateral,
    Optional<Loop> liner,
    List<Cut> cuts,
    List<GapLine> gaps,
    Optional<SectionFigures> bonded,
    Optional<SectionFigures> slipping) {
  private static final int AROUND = 180;
  private static final double STEP = 1e-4;
  private static final double[] TROUGH_GAPS = {0, 1.05, -1.05};

  /**
   * The figures of a section.
   *
   * @param area mm²
   * @param inertia second moment about the medio-lateral axis (mm⁴)
   * @param rigidity EI about the same (N·mm²)
   */
  public record SectionFigures(double area, double inertia, double rigidity) {
    static SectionFigures of(Section section, double modulus) {
      double inertia = section.moments().aboutY();
      return new SectionFigures(section.moments().area(), inertia, modulus * inertia);
    }
  }

  /**
   * One piece's part of it.
   *
   * @param piece which
   * @param loops its outline
   * @param figures of it alone
   * @param leastGap least distance from its outline to the skin (mm)
   * @param bridge where it bridges a waist of the finger
   */
  public record Cut(
      PieceShape piece,
      List<Loop> loops,
      SectionFigures figures,
      double leastGap,
      SectionBridge bridge) {
    public Cut {
      loops = List.copyOf(loops);
    }
  }

  /**
   * Where in the section a piece stands further off the skin than its clearance asks.
   *
   * @param rise at most (mm)
   * @param skin points y, n of the skin under it, two by two the ends of short lines (mm)
   */
  public record SectionBridge(double rise, List<double[]> skin) {
    public SectionBridge {
      skin = List.copyOf(skin);
    }
  }

  public CrossSection {
    midlateral = List.copyOf(midlateral);
    cuts = List.copyOf(cuts);
    gaps = List.copyOf(gaps);
  }

  /** Least distance between the two pieces (mm); empty unless both are met. */
  public Optional<Double> between() {
    return cuts.size() < 2
        ? Optional.empty()
        : cuts.get(1).loops().stream()
            .map(loop -> Outlines.distance(cuts.get(0).loops(), loop))
            .min(Double::compare);
  }

  /**
   * How far the dorsal shell reaches volarly past the trough's rims, the lesser of both sides (mm):
   * less than zero where it ends before them; empty unless both are met.
   */
  public Optional<Double> overlap() {
    if (cuts.size() < 2) {
      return Optional.empty();
    }
    double least = Double.POSITIVE_INFINITY;
    for (int side = -1; side <= 1; side += 2) {
      double rim = Double.NEGATIVE_INFINITY;
      double edge = Double.POSITIVE_INFINITY;
      for (Cut cut : cuts) {
        for (Loop loop : cut.loops()) {
          for (int k = 0; k < loop.size(); k++) {
            if (side * loop.y(k) > 0 && cut.piece().isDorsal()) {
              edge = Math.min(edge, loop.n(k));
            } else if (side * loop.y(k) > 0) {
              rim = Math.max(rim, loop.n(k));
            }
          }
        }
      }
      least = Math.min(least, rim - edge);
    }
    return Optional.of(least);
  }

  /** The part of a piece that is met, if it is. */
  public Optional<Cut> cut(boolean dorsal) {
    return cuts.stream().filter(cut -> cut.piece().isDorsal() == dorsal).findFirst();
  }

  /** The section of a design; the station is held on the finger. */
  public static CrossSection of(DesignShapes design, double station) {
    DigitSurface digit = design.orthosis().digit();
    double at = Math.min(station, digit.pulpEnd() - 0.05);
    SkinLine line = new SkinLine(digit.slice(at), SectionPlane.at(digit, at));
    Loop skin = line.loop(AROUND);
    double modulus = Material.of(design.orthosis().order().design().material()).modulus();
    List<List<Loop>> loops = design.sections().loops(at);
    List<Cut> cuts = new ArrayList<>();
    for (int i = 0; i < loops.size(); i++) {
      if (!loops.get(i).isEmpty()) {
        SectionFigures figures = SectionFigures.of(Section.of(loops.get(i)), modulus);
        double gap = Outlines.distance(loops.get(i), skin);
        PieceShape piece = design.pieces().get(i);
        cuts.add(new Cut(piece, loops.get(i), figures, gap, bridge(piece.solid().piece(), line)));
      }
    }
    double quarter = digit.circumference(at) / 4;
    return new CrossSection(
        at,
        digit.circumference(at),
        skin,
        List.of(line.at(line.angle(quarter)), line.at(line.angle(-quarter))),
        liner(design, line, at),
        cuts,
        gaps(cuts, line),
        pair(loops, cuts, Joining.BONDED, modulus),
        pair(loops, cuts, Joining.SLIPPING, modulus));
  }

  private static SectionBridge bridge(Piece piece, SkinLine line) {
    Slice slice = line.slice();
    double half = piece.outline().wrap() * slice.circumference() / 2;
    List<double[]> skin = new ArrayList<>();
    double rise = 0;
    for (int i = 0; i < AROUND; i++) {
      double from = piece.skinGirth(half * (2.0 * i / AROUND - 1), slice.station());
      double to = piece.skinGirth(half * (2.0 * (i + 1) / AROUND - 1), slice.station());
      double here = piece.bridge().at(from, slice.station());
      if (here >= BridgedStretch.TOLD) {
        rise = Math.max(rise, here);
        skin.add(line.at(slice.angle(from)));
        skin.add(line.at(slice.angle(to)));
      }
    }
    return new SectionBridge(rise, skin);
  }

  private static Optional<SectionFigures> pair(
      List<List<Loop>> loops, List<Cut> cuts, Joining joining, double modulus) {
    return cuts.size() < 2
        ? Optional.empty()
        : Optional.of(SectionFigures.of(Sections.joined(loops, joining), modulus));
  }

  /** The liner as it lies on the skin under the trough. */
  private static Optional<Loop> liner(DesignShapes design, SkinLine line, double station) {
    double thickness = design.orthosis().order().design().trough().liner();
    Outline outline = design.orthosis().trough().piece().outline();
    boolean covered = station >= outline.flankStart() && station <= outline.distal();
    if (thickness == 0 || !covered) {
      return Optional.empty();
    }
    double wrap = design.orthosis().order().design().trough().wrap();
    double reach = line.angle(wrap * design.orthosis().digit().circumference(station) / 2);
    int n = AROUND / 2;
    double[] points = new double[4 * (n + 1)];
    for (int i = 0; i <= n; i++) {
      double t = -reach + 2 * reach * i / n;
      double[] on = line.at(t);
      double[] out = line.outward(t);
      points[2 * i] = on[0];
      points[2 * i + 1] = on[1];
      int back = 2 * (2 * n + 1 - i);
      points[back] = on[0] + thickness * out[0];
      points[back + 1] = on[1] + thickness * out[1];
    }
    return Optional.of(new Loop(points));
  }

  /** Along the skin's normal to where it first meets each piece. */
  private static List<GapLine> gaps(List<Cut> cuts, SkinLine line) {
    List<GapLine> gaps = new ArrayList<>();
    for (Cut cut : cuts) {
      for (double off : cut.piece().isDorsal() ? new double[] {0} : TROUGH_GAPS) {
        double t = cut.piece().solid().piece().midline().skinAngle(off);
        double[] on = line.at(t);
        double[] out = line.outward(t);
        cut.loops().stream()
            .mapToDouble(loop -> Outlines.ahead(loop, on[0], on[1], out[0], out[1]))
            .min()
            .stream()
            .filter(Double::isFinite)
            .forEach(gap -> gaps.add(new GapLine(on[0], on[1], out[0], out[1], gap)));
      }
    }
    return gaps;
  }

  /**
   * The skin in the plane of the section.
   *
   * @param slice the skin there
   * @param plane the section's
   */
  private record SkinLine(Slice slice, SectionPlane plane) {
    double angle(double girth) {
      return slice.angle(girth);
    }

    /** The point at an angle: y, n. */
    double[] at(double t) {
      Vector3D off = plane.origin().vectorTo(slice.point(t));
      return new double[] {off.getY(), off.dot(plane.dorsal())};
    }

    /** Outward normal at an angle: y, n. */
    double[] outward(double t) {
      double[] before = at(t - STEP);
      double[] after = at(t + STEP);
      double dy = after[0] - before[0];
      double dn = after[1] - before[1];
      double length = Math.hypot(dy, dn);
      return new double[] {dn / length, -dy / length};
    }

    Loop loop(int points) {
      double[] yn = new double[2 * points];
      for (int i = 0; i < points; i++) {
        System.arraycopy(at(2 * Math.PI * i / points - Math.PI), 0, yn, 2 * i, 2);
      }
      return new Loop(yn);
    }
  }
}
