package org.midlateral.shell;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.GeometryCombiner;
import org.midlateral.cut.Lettering;
import org.midlateral.piece.Piece;
import org.midlateral.piece.Raised;
import org.midlateral.trough.ReferenceLabel;

/**
 * The word PROXIMAL, raised along the dorsal shell behind an arrow that points to its proximal end.
 */
public final class ProximalWord {
  private static final String WORD = "PROXIMAL";

  /** Heights of capitals to try (mm), as of a reference. */
  private static final double[] CAPITALS = {4, 3.2};

  /** From the arrow to the word, and the arrow's length, over the height of capitals. */
  private static final double APART = 0.35;

  private static final double ARROW = 0.9;

  /** Drawn once: every shell bears the same. Their slopes are drawn where they have room. */
  private static final Map<Double, Geometry> SHAPES = new ConcurrentHashMap<>();

  private static final Map<Double, Raised> SIGNS = new ConcurrentHashMap<>();

  private ProximalWord() {}

  /**
   * The word in a field of the shell; empty where it has no room.
   *
   * @param from proximal end of the field (mm)
   * @param to distal end of the field (mm)
   * @param width of the field along the girth, about the shell's midline (mm)
   */
  public static Optional<Raised> on(Piece shell, double from, double to, double width) {
    for (double capital : CAPITALS) {
      Geometry shape = SHAPES.computeIfAbsent(capital, ProximalWord::shape);
      Envelope box = shape.getEnvelopeInternal();
      if (box.getWidth() <= to - from && box.getHeight() <= width) {
        Raised sign = SIGNS.computeIfAbsent(capital, c -> Raised.of(shape, ReferenceLabel.HEIGHT));
        // As far proximal as it goes: it is said of that end.
        return Optional.of(ReferenceLabel.laid(shell, sign, from + box.getWidth() / 2));
      }
    }
    return Optional.empty();
  }

  /** Arrow and word, centred on the origin, x along the line, y up (mm). */
  private static Geometry shape(double capital) {
    Geometry word = Lettering.outlines(List.of(WORD), capital);
    double base = word.getEnvelopeInternal().getMinX() - APART * capital;
    Coordinate tip = new Coordinate(base - ARROW * capital, 0);
    Coordinate[] ring = {
      tip, new Coordinate(base, -capital / 2), new Coordinate(base, capital / 2), tip
    };
    Geometry both = GeometryCombiner.combine(word, new GeometryFactory().createPolygon(ring));
    double middle = both.getEnvelopeInternal().centre().x;
    return AffineTransformation.translationInstance(-middle, 0).transform(both);
  }
}
