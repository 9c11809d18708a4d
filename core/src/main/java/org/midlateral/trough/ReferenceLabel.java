package org.midlateral.trough;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.midlateral.cut.Lettering;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Refusals;
import org.midlateral.piece.Piece;

/** The order's reference, raised on the outside of a piece along the finger. */
public final class ReferenceLabel {
  /** Height of the letters over the surface (mm). */
  public static final double HEIGHT = 0.6;

  /** Heights of capitals to try (mm): strokes are a fifth as wide, 0.8 down to 0.6 mm. */
  private static final double[] CAPITALS = {4, 3.2};

  /** Room one letter takes along a line, over the height of capitals. */
  private static final double ADVANCE = 0.77;

  private ReferenceLabel() {}

  /**
   * The label in a field of the piece.
   *
   * @param piece it stands on
   * @param text to raise
   * @param from proximal end of the field (mm)
   * @param to distal end of the field (mm)
   * @param width of the field along the girth, about the piece's midline (mm)
   * @throws DesignRefused where the text does not fit
   */
  public static Geometry on(Piece piece, String text, double from, double to, double width)
      throws DesignRefused {
    for (double capital : CAPITALS) {
      int most = Math.max(2, (int) ((to - from) / (ADVANCE * capital)));
      Geometry letters = Lettering.outlines(Lettering.broken(text, most), capital);
      Envelope box = letters.getEnvelopeInternal();
      if (box.getWidth() <= to - from && box.getHeight() <= width) {
        return laid(piece, letters, (from + to) / 2);
      }
    }
    throw new DesignRefused(Refusals.labelRoom(piece.name(), text.length(), to - from, width));
  }

  /** Lines run distally, read from outside with the finger pointing right, true to size outside. */
  private static Geometry laid(Piece piece, Geometry letters, double station) {
    double mean = piece.digit().circumference(station) / (2 * Math.PI);
    double outside = piece.gap().at(0, station) + piece.wall();
    double girth = mean / (mean + outside);
    // Seen from outside with +s to the right, +g points down.
    return new AffineTransformation(0, -girth, 0, 1, 0, station).transform(letters);
  }
}
