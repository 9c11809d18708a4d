package org.midlateral.recipe.rigidity;

import java.util.function.DoubleUnaryOperator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Hand;
import org.midlateral.piece.GapField;
import org.midlateral.piece.Midline;
import org.midlateral.piece.Piece;
import org.midlateral.recipe.Orthosis;
import org.midlateral.solid.Solid;
import org.midlateral.solid.SolidMesher;

/**
 * What closes a trough to a tube: the dorsal rest of the circumference with the trough's own wall
 * and gap but no flare, from the start of its flanks to its distal end. Nobody makes it; it is
 * there to compare wraps with the closed section.
 */
final class DorsalHalf {
  private static final double STEP = 0.5;

  private DorsalHalf() {}

  /**
   * The rest of an orthosis's trough as a solid, edge to edge with it.
   *
   * @param wrap the trough's share of the circumference
   * @throws DesignRefused where it cannot be meshed
   */
  static Solid of(Orthosis made, double wrap) throws DesignRefused {
    Solid solid = SolidMesher.mesh(piece(made, wrap), made.trough().edgeLength());
    return made.order().measurements().hand() == Hand.LEFT ? solid.mirrored() : solid;
  }

  /**
   * The rest of an orthosis's trough, as drawn for a right hand.
   *
   * @param wrap the trough's share of the circumference
   */
  static Piece piece(Orthosis made, double wrap) {
    Piece piece = made.trough().piece();
    DigitSurface digit = piece.digit();
    double from = piece.outline().flankStart();
    boolean open = piece.outline().distal() < digit.pulpEnd();
    double to = open ? piece.outline().distal() : digit.tip();
    DoubleUnaryOperator flank = s -> (1 - wrap) / 2 * digit.circumference(s);
    int n = (int) Math.ceil((to - from) / STEP);
    Coordinate[] ring = new Coordinate[2 * n + 3];
    for (int i = 0; i <= n; i++) {
      double s = from + (to - from) * i / n;
      ring[i] = new Coordinate(flank.applyAsDouble(s), s);
      ring[2 * n + 1 - i] = new Coordinate(-flank.applyAsDouble(s), s);
    }
    ring[2 * n + 2] = ring[0];
    // Inside sharper corners the rim's loop folds over the tapering finger, and the mesh does not
    // close.
    double corner = 3 * piece.wall();
    Polygon square = new GeometryFactory().createPolygon(ring);
    Polygon round = (Polygon) square.buffer(-corner, 16).buffer(corner, 16);
    // Buffering turns the shell clockwise.
    Outline outline = new Outline(round.reverse(), 1 - wrap, from, from + corner, to - corner, to);
    TroughDesign design = made.order().design().trough();
    GapField plain = GapField.uniform(design.clearance() + design.liner());
    Piece rest = new Piece("dorsal-half", digit, outline, Midline.DORSAL, plain, piece.wall());
    return made.relief().over(rest);
  }
}
