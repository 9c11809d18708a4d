package org.midlateral.cut;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.GeometryCombiner;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.midlateral.shared.SharedData;

/** Outlines of letters, for text raised on a piece. */
public final class Lettering {
  /** Height of capitals over the font's size. */
  private static final double CAPITAL = 0.711;

  /** Distance of base lines over the height of capitals. */
  private static final double LINE = 1.5;

  /** Room between two letters (mm). */
  private static final double BETWEEN = 0.9;

  /** Size of the font that the outlines are filed at. */
  static final int SIZE = 100;

  private Lettering() {}

  /** The outlines as they are filed, and those that were asked for. */
  private static final class Face {
    static final Map<Character, String> FILED = load();
    static final Map<Character, Geometry> READ = new ConcurrentHashMap<>();
  }

  /**
   * Lines of text, centred on the origin; x along the lines, y up (mm). No letter meets another.
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
    return GeometryCombiner.combine(parts);
  }

  /** One line, set wider than print is: raised letters need room for their slopes. */
  private static Geometry line(String text, double capital, GeometryFactory factory) {
    double scale = capital / (CAPITAL * SIZE);
    List<Geometry> letters = new ArrayList<>();
    double x = 0;
    for (int i = 0; i < text.length(); i++) {
      Geometry letter = letter(text.charAt(i));
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

  /**
   * The outline of a sign at the size it is filed at.
   *
   * @throws IllegalArgumentException of a sign that a reference cannot have
   */
  static Geometry letter(char sign) {
    return Face.READ.computeIfAbsent(sign, Lettering::read);
  }

  private static Geometry read(char sign) {
    String filed = Face.FILED.get(sign);
    if (filed == null) {
      throw new IllegalArgumentException("no outline of the sign " + sign);
    }
    try {
      return new WKTReader().read(filed);
    } catch (ParseException e) {
      throw new IllegalStateException("the shared outlines of letters cannot be read", e);
    }
  }

  /**
   * A sign and its polygon on each line. They are filed as such since opening the font itself takes
   * a tenth of a second.
   */
  private static Map<Character, String> load() {
    try (InputStream in = SharedData.open(SharedData.LETTERS)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .collect(Collectors.toMap(line -> line.charAt(0), line -> line.substring(2)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
