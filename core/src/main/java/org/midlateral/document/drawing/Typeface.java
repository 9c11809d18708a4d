package org.midlateral.document.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.midlateral.shared.SharedData;

/** The typeface of all documents, and the room its texts take. */
public enum Typeface {
  REGULAR(SharedData.FONT_REGULAR),
  BOLD(SharedData.FONT_BOLD);

  private static final Pattern TOGETHER =
      Pattern.compile("(?<=\\d) (?=\\d+/\\d|(?:mm|cm|in|N|kPa|mmHg)\\b|°[CF]|%)");

  private static final char REPLACEMENT = '\ufffd';

  /** Accents, joiners and the like. */
  private static final Set<Integer> CHANGES_ANOTHER =
      Set.of(
          (int) Character.NON_SPACING_MARK,
          (int) Character.ENCLOSING_MARK,
          (int) Character.FORMAT,
          (int) Character.SURROGATE);

  private final TrueTypeFont font;
  private final CmapLookup glyphs;
  private final double unitsPerEm;

  Typeface(String resource) {
    try (InputStream in = SharedData.open(resource)) {
      font = new TTFParser().parse(new RandomAccessReadBuffer(in));
      // One glyph for each letter, as its widths are counted: looking for ligatures took a fifth of
      // the time of all documents.
      font.setEnableGsub(false);
      glyphs = font.getUnicodeCmapLookup();
      unitsPerEm = font.getUnitsPerEm();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Typeface of(boolean bold) {
    return bold ? BOLD : REGULAR;
  }

  /** The face, to be embedded; files on several threads may share it, and none closes it. */
  TrueTypeFont font() {
    return font;
  }

  /**
   * A text as it can be drawn: a sign that the typeface lacks becomes its replacement sign, and one
   * that only changes the sign before it is left out.
   */
  public String shown(String text) {
    if (text.codePoints().allMatch(this::has)) {
      return text;
    }
    StringBuilder shown = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              if (has(c)) {
                shown.appendCodePoint(c);
              } else if (!CHANGES_ANOTHER.contains(Character.getType(c))) {
                shown.append(REPLACEMENT);
              }
            });
    return shown.toString();
  }

  /** How much of a text fits into a width: at least its first sign, as drawn to its end. */
  private int fitting(String text, double size, double width) {
    int end = text.length();
    while (width(text.substring(0, end), size) > width && end > text.offsetByCodePoints(0, 1)) {
      end = text.offsetByCodePoints(end, -1);
    }
    return end;
  }

  private boolean has(int codePoint) {
    return glyphs.getGlyphId(codePoint) != 0;
  }

  /**
   * Width of a line of text (mm).
   *
   * @param text without line breaks
   * @param size of the type (mm)
   */
  public double width(String text, double size) {
    double units = 0;
    for (int c : shown(text).codePoints().toArray()) {
      try {
        units += font.getAdvanceWidth(glyphs.getGlyphId(c));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return units * size / unitsPerEm;
  }

  /**
   * A text in lines no longer than a width; a word that is longer is broken where the line ends,
   * and a number keeps its fraction and its unit.
   *
   * @param text words between single spaces
   * @param size of the type (mm)
   * @param width of the column (mm)
   */
  public List<String> wrapped(String text, double size, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String bound : TOGETHER.matcher(text).replaceAll("\u00a0").split(" ")) {
      String word = bound.replace('\u00a0', ' ');
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && width(longer, size) > width) {
        lines.add(line);
        longer = word;
      }
      line = longer;
      for (int fits = fitting(line, size, width);
          fits < line.length();
          fits = fitting(line, size, width)) {
        lines.add(line.substring(0, fits));
        line = line.substring(fits);
      }
    }
    lines.add(line);
    return lines;
  }
}
