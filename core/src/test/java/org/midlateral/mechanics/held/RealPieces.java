package org.midlateral.mechanics.held;

import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.midlateral.Fingers;
import org.midlateral.RoundFinger;
import org.midlateral.cut.MidlateralCut;
import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.piece.GapField;
import org.midlateral.piece.Midline;
import org.midlateral.piece.Piece;
import org.midlateral.relief.Relief;
import org.midlateral.shell.DorsalShell;
import org.midlateral.trough.Trough;

/** Pieces on invented fingers, made as they are made for printing. */
final class RealPieces {
  static final Isotropic MATERIAL = new Isotropic(1500, 0.4);

  /** Of the round tubes (mm). */
  private static final double WALL = 1.6;

  private RealPieces() {}

  /** A slim finger that hardly bulges. */
  static Measurements slim() {
    return finger(58, 59, 53, 46);
  }

  /** A bulbous PIP joint between thin phalanges; relief bubbles are made over its sides. */
  static Measurements bulbous() {
    return finger(58, 68, 54, 47);
  }

  /** The ring finger of the other tests, with 25 degrees of extension deficit. */
  static Measurements bent() {
    return Fingers.ring(Math.toRadians(25));
  }

  private static Measurements finger(double proximal, double pip, double middle, double tip) {
    return Fingers.ring()
        .withCircumference(
            Map.of(
                Level.PROXIMAL_PHALANX,
                proximal,
                Level.PIP,
                pip,
                Level.MIDDLE_PHALANX,
                middle,
                Level.TIP,
                tip))
        .withLengths(22, 26, 25, 25);
  }

  private static Piece bare(Measurements measured, double wrap) throws DesignRefused {
    DigitSurface digit = TapedDigit.of(measured);
    Design.TroughDesign design = Fingers.trough(wrap, Design.DistalEnd.OPEN);
    return Trough.of(design, digit, MidlateralCut.of(measured, design, digit));
  }

  /** A pair over every joint that stands out: of one that is not bulbous, since it is sore. */
  private static Relief relief(Measurements measured) throws DesignRefused {
    DigitSurface digit = TapedDigit.of(measured);
    boolean sore = Relief.suggested(measured, Fingers.design().relief(), digit);
    return Relief.of(measured, (sore ? Fingers.sore() : Fingers.design()).relief(), digit);
  }

  static Piece trough(Measurements measured, double wrap) throws DesignRefused {
    return relief(measured).over(bare(measured, wrap));
  }

  static Piece dorsal(Measurements measured) throws DesignRefused {
    Piece bare = bare(measured, 0.5);
    return DorsalShell.of(
        Fingers.design(), bare.digit(), bare, relief(measured).over(bare), relief(measured));
  }

  /**
   * Half of a round tube on a straight round finger: mid radius 9, wall 1.6, length 75. The
   * finished edge lies so far out that the round rim has as much section as the square one of the
   * half tube.
   */
  static Piece halfTube() {
    double beyond = WALL * (0.5 - Math.PI / 8);
    return halfTube("trough", beyond, beyond);
  }

  /**
   * Half of the same tube that meets its other half edge to edge: volar or dorsal.
   *
   * @param beyond walls that its ends lie beyond the tube's
   */
  static Piece tubeHalf(String name, double beyond) {
    return halfTube(name, 0, WALL * beyond);
  }

  private static Piece halfTube(String name, double beyondSides, double beyondEnds) {
    double wall = WALL;
    double skin = 9 - wall / 2;
    double round = 2 * Math.PI * skin;
    Measurements measured = RoundFinger.of(skin, 30, 34.5, 40, 20);
    double half = round / 4 + beyondSides * skin / 9;
    Polygon rectangle = rounded(half, -beyondEnds, 75 + beyondEnds, 1.5);
    Outline outline = new Outline(rectangle, 0.5, -beyondEnds, 1.5, 73.5, 75 + beyondEnds);
    Midline midline = name.equals("dorsal") ? Midline.DORSAL : Midline.VOLAR;
    return new Piece(name, TapedDigit.of(measured), outline, midline, GapField.uniform(0), wall);
  }

  private static Polygon rounded(double half, double from, double to, double radius) {
    GeometryFactory factory = new GeometryFactory();
    Coordinate[] inside = {
      new Coordinate(-half + radius, from + radius),
      new Coordinate(half - radius, from + radius),
      new Coordinate(half - radius, to - radius),
      new Coordinate(-half + radius, to - radius),
      new Coordinate(-half + radius, from + radius)
    };
    return (Polygon) factory.createPolygon(inside).buffer(radius, 16).norm().reverse();
  }
}
