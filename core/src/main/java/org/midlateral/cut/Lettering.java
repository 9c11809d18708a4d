package org.midlateral.cut;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.awt.FontGlyphReader;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.midlateral.shared.SharedData;

/** Outlines of letters, for text raised on a piece. */
public final class Lettering {
  /** Height of capitals over the font's size. */
  private static final double CAPITAL = 0.711;

  /** Distance of base lines over the height of capitals. */
  private static final double LINE = 1.5;

  /** Room between two letters (mm). */
  private static final double BETWEEN = 0.9;

  /** The font is read at this size and scaled: its curves are flattened finely enough then. */
  private static final int READ_SIZE = 100;

  private Lettering() {}

  private static final class Face {
    static final Font BOLD = load();
  }

  /**
   * Lines of text, centred on the origin; x along the lines, y up (mm).
   *
   * @param lines of text, at least one, none of them blank
   * @param capital height of capitals (mm)
   */
  public static Geometry outlines(List<String> lines, double capital) {
    GeometryFactory factory = new GeometryFactory();
    List<Geometry> parts = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Geometry line = line(lines.get(i), capital, factory);
      Envelope box = line.getEnvelopeInternal();
      double middle = (box.getMinX() + box.getMaxX()) / 2;
      double base = ((lines.size() - 1) / 2.0 - i) * LINE * capital - capital / 2;
      parts.add(AffineTransformation.translationInstance(-middle, base).transform(line));
    }
    return factory.buildGeometry(parts).union();
  }

  /** One line, set wider than print is: raised letters need room for their slopes. */
  private static Geometry line(String text, double capital, GeometryFactory factory) {
    double scale = capital / (CAPITAL * READ_SIZE);
    Font font = Face.BOLD.deriveFont((float) READ_SIZE);
    List<Geometry> letters = new ArrayList<>();
    double x = 0;
    for (int i = 0; i < text.length(); i++) {
      Geometry letter = FontGlyphReader.read(text.substring(i, i + 1), font, factory);
      Envelope box = letter.getEnvelopeInternal();
      AffineTransformation place =
          AffineTransformation.translationInstance(-box.getMinX(), 0).scale(scale, scale);
      letters.add(place.translate(x, 0).transform(letter));
      x += scale * box.getWidth() + BETWEEN;
    }
    return factory.buildGeometry(letters);
  }

  /**
   * Breaks a text into lines of at most so many letters, at a hyphen, dot or underscore if it can.
   */
  public static List<String> broken(String text, int most) {
    List<String> lines = new ArrayList<>();
    String rest = text;
    while (rest.length() > most) {
      int cut = most;
      for (int i = most; i > most / 2; i--) {
        if ("-._".indexOf(rest.charAt(i - 1)) >= 0) {
          cut = i;
          break;
        }
      }
      lines.add(rest.substring(0, cut));
      rest = rest.substring(cut);
    }
    lines.add(rest);
    return lines;
  }

  private static Font load() {
    try (InputStream in = SharedData.open(SharedData.FONT_BOLD)) {
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (FontFormatException e) {
      throw new IllegalStateException("the shared font cannot be read", e);
    }
  }
}
