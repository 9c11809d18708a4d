package org.midlateral.cut;

import java.awt.Font;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.locationtech.jts.awt.FontGlyphReader;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.shared.SharedData;

/**
 * The outlines of letters that the bold face stands for. Running it writes the file in the shared
 * data anew; the test holds the file against it.
 */
final class LettersFromFont {
  private LettersFromFont() {}

  /** Writes the outlines to the file given. */
  public static void main(String[] arguments) throws Exception {
    Files.writeString(Path.of(arguments[0]), text());
  }

  /** A line for every sign that a reference may have: the sign, a blank, its outline. */
  static String text() throws Exception {
    Font font;
    try (InputStream in = SharedData.open(SharedData.FONT_BOLD)) {
      font = Font.createFont(Font.TRUETYPE_FONT, in).deriveFont((float) Lettering.SIZE);
    }
    return signs().chars().mapToObj(sign -> line(sign, font)).collect(Collectors.joining());
  }

  private static String line(int sign, Font font) {
    String text = Character.toString(sign);
    Geometry outline = FontGlyphReader.read(text, font, new GeometryFactory());
    return text + " " + outline.toText() + "\n";
  }

  static String signs() {
    String pattern = KeyTable.standard().find("reference").orElseThrow().pattern();
    return IntStream.rangeClosed(0, Character.MAX_VALUE)
        .mapToObj(Character::toString)
        .filter(sign -> ("a" + sign).matches(pattern))
        .collect(Collectors.joining());
  }
}
