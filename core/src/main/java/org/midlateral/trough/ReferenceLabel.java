package org.midlateral.trough;

import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.midlateral.cut.Lettering;
import org.midlateral.piece.Piece;
import org.midlateral.piece.Raised;

/**
 * The order's reference, raised on the outside of a piece along the finger; where the whole of it
 * has no room, its last letters, which tell orders apart best.
 *
 * @param text that is raised
 * @param raised its letters on the piece's outline plane
 */
public record ReferenceLabel(String text, Raised raised) {
  /** Height of the letters over the surface (mm). */
  public static final double HEIGHT = 0.6;

  /** Fewer letters of a longer reference say nothing. */
  public static final int FEWEST = 3;

  /** Heights of capitals to try (mm): strokes are a fifth as wide, 0.8 down to 0.6 mm. */
  private static final double[] CAPITALS = {4, 3.2};

  /** Room one letter takes along a line, over the height of capitals. */
  private static final double ADVANCE = 0.77;

  /**
   * The label in a field of the piece; empty where not even {@value #FEWEST} letters have room.
   *
   * @param piece it stands on
   * @param reference to raise, of letters, digits, dots, dashes and underscores
   * @param from proximal end of the field (mm)
   * @param to distal end of the field (mm)
   * @param width of the field along the girth, about the piece's midline (mm)
   */
  public static Optional<ReferenceLabel> on(
      Piece piece, String reference, double from, double to, double width) {
    Optional<Geometry> whole = letters(reference, to - from, width);
    // By halving: of fewer letters, more have room.
    Optional<Geometry> best = whole;
    int fits = whole.isPresent() ? reference.length() : 0;
    int tooMany = reference.length();
    while (tooMany - fits > 1) {
      int middle = (fits + tooMany) / 2;
      Optional<Geometry> ending = letters(ending(reference, middle), to - from, width);
      if (ending.isPresent()) {
        fits = middle;
        best = ending;
      } else {
        tooMany = middle;
      }
    }
    String text = ending(reference, fits);
    return best.filter(shape -> text.equals(reference) || text.length() >= FEWEST)
        .map(
            shape ->
                new ReferenceLabel(text, laid(piece, Raised.of(shape, HEIGHT), (from + to) / 2)));
  }

  private static String ending(String text, int letters) {
    return text.substring(text.length() - letters);
  }

  /** A text in lines, as large as has room; empty where it has none. */
  private static Optional<Geometry> letters(String text, double length, double width) {
    for (double capital : CAPITALS) {
      int most = Math.max(2, (int) (length / (ADVANCE * capital)));
      Geometry letters = Lettering.outlines(Lettering.broken(text, most), capital);
      Envelope box = letters.getEnvelopeInternal();
      if (box.getWidth() <= length && box.getHeight() <= width) {
        return Optional.of(letters);
      }
    }
    return Optional.empty();
  }

  /**
   * Letters laid on a piece: lines run distally, read from outside with the finger pointing right,
   * true to size outside.
   *
   * @param letters centred on the origin, x along the lines, y up (mm)
   * @param station of their middle (mm)
   */
  public static Raised laid(Piece piece, Raised letters, double station) {
    double mean = piece.digit().circumference(station) / (2 * Math.PI);
    double outside = piece.gap().at(0, station) + piece.wall();
    double girth = mean / (mean + outside);
    // Seen from outside with +s to the right, +g points down.
    return letters.transformed(new AffineTransformation(0, -girth, 0, 1, 0, station));
  }
}
