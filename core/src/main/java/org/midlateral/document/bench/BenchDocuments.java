package org.midlateral.document.bench;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.midlateral.document.Content;
import org.midlateral.document.drawing.PageFrame;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.document.pattern.FlatPattern;
import org.midlateral.measurement.Caution;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.closure.Closure;

/**
 * The files for the bench.
 *
 * @param files by name, ready to be written: bench-sheet.pdf, pattern.pdf, patient-page.pdf,
 *     pattern.svg and pattern-2.svg on for its further pages, pattern.dxf
 * @param pattern the flat pattern
 * @param closure the closures
 */
public record BenchDocuments(Map<String, Content> files, FlatPattern pattern, Closure closure) {
  /** Names of the files that there are for every order. */
  public static final List<String> CERTAIN =
      List.of("bench-sheet.pdf", "pattern.pdf", "patient-page.pdf", svg(1), "pattern.dxf");

  public BenchDocuments {
    files = Collections.unmodifiableMap(new LinkedHashMap<>(files));
  }

  /**
   * The file of a page of the pattern, as large as its paper.
   *
   * @param page counted from 1
   */
  public static String svg(int page) {
    return page == 1 ? "pattern.svg" : "pattern-" + page + ".svg";
  }

  /** The frame of a document about an order. */
  public static PageFrame frame(Order order, PaperSize paper, String title) {
    Measurements measured = order.measurements();
    String subject =
        measured.reference()
            + ", "
            + word(measured.hand())
            + " hand, "
            + word(measured.digit())
            + " finger"
            + order.note().map(note -> ". " + note).orElse("");
    return new PageFrame(paper, title, subject, caution("skin-check") + " " + caution("remove-it"));
  }

  static String caution(String code) {
    return Caution.all().stream()
        .filter(caution -> caution.code().equals(code))
        .map(Caution::text)
        .findFirst()
        .orElseThrow();
  }

  static String word(Enum<?> name) {
    return name.name().toLowerCase(Locale.ROOT);
  }
}
