package org.midlateral.viewer.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.SkinFoot;
import org.midlateral.digit.Slice;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.Hand;
import org.midlateral.relief.ReliefBubble;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.section.Stations;

/**
 * One of the rises of a relief: one that stands by itself, or either of the pair over the
 * collateral ligaments.
 *
 * @param number in the order of the file, from 0; {@link RiseListener#PAIR} for one of the pair
 * @param shape its footprint on the drawn finger
 * @param outline round its footprint, from where it ends
 */
record Rise(int number, ReliefBubble shape, List<Rise.OutlinePoint> outline) {
  private static final int AROUND = 48;

  Rise {
    outline = List.copyOf(outline);
  }

  /**
   * A place on the skin.
   *
   * @param station mm from the web
   * @param girth mm from the volar midline, positive to +y
   */
  record SkinPlace(double station, double girth) {
    /** The place nearest to a point beside the finger. */
    static SkinPlace near(DigitSurface digit, Vector3D p) {
      double station = Stations.nearest(digit, p);
      double angle = Math.atan2(p.getY(), -(p.getZ() - digit.centre(station).getZ()));
      SkinFoot foot = new SkinFoot(digit);
      foot.find(p.getX(), p.getY(), p.getZ(), angle, station);
      return new SkinPlace(foot.station(), foot.girth());
    }
  }

  /**
   * A point of the outline.
   *
   * @param skin on the finger (mm)
   * @param normal outward there
   */
  record OutlinePoint(Vector3D skin, Vector3D normal) {}

  /** Those of a design; the pair, where it is made, comes last. */
  static List<Rise> of(DesignShapes design) {
    DigitSurface digit = design.orthosis().digit();
    int side = side(design);
    List<Rise> rises = new ArrayList<>();
    for (Design.Bubble b : design.orthosis().order().design().relief().bubbles()) {
      ReliefBubble shape =
          new ReliefBubble(digit, side * b.girth(), b.station(), b.height(), b.width(), b.length());
      rises.add(new Rise(rises.size(), shape, outline(shape)));
    }
    List<ReliefBubble> made = design.orthosis().relief().bubbles();
    // The pair is alike on both sides: no hand tells them apart.
    for (ReliefBubble one : made.subList(0, made.size() - rises.size())) {
      rises.add(new Rise(RiseListener.PAIR, one, outline(one)));
    }
    return rises;
  }

  /** Whether it is one of the pair. */
  boolean isOfPair() {
    return number == RiseListener.PAIR;
  }

  /** +1 where the drawn finger's +y is radial, else -1. */
  static int side(DesignShapes design) {
    return design.orthosis().order().measurements().hand() == Hand.LEFT ? -1 : 1;
  }

  boolean holds(SkinPlace place) {
    return shape.isNear(place.girth(), place.station(), 0);
  }

  private static List<OutlinePoint> outline(ReliefBubble shape) {
    List<OutlinePoint> points = new ArrayList<>();
    for (int i = 0; i <= AROUND; i++) {
      double t = 2 * Math.PI * i / AROUND;
      points.add(
          point(
              shape.digit(),
              shape.station() + shape.length() * Math.cos(t),
              shape.girth() + shape.width() * Math.sin(t)));
    }
    return points;
  }

  private static OutlinePoint point(DigitSurface digit, double station, double girth) {
    Slice slice = digit.slice(Math.min(station, digit.pulpEnd() - 0.5));
    double round = slice.circumference();
    double nearest = girth - round * Math.rint(girth / round);
    double angle = slice.angle(nearest);
    return new OutlinePoint(slice.point(angle), slice.normal(angle));
  }

  /** As it is named, in the form too. */
  String name() {
    return isOfPair()
        ? String.format(Locale.ROOT, "Pair at the PIP joint, %.1f mm high", shape.height())
        : String.format(Locale.ROOT, "Rise %d, %.1f mm high", number + 1, shape.height());
  }

  /** What may be done to it, in words. */
  String gestures() {
    return isOfPair()
        ? "Drag to move both round the finger, wheel for their height"
        : "Drag to move, wheel for its height";
  }
}
