package org.midlateral.document.bench;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.midlateral.digit.DigitSurface;
import org.midlateral.document.Content;
import org.midlateral.document.drawing.DxfFile;
import org.midlateral.document.drawing.Page;
import org.midlateral.document.drawing.PageFrame;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.document.drawing.PdfFile;
import org.midlateral.document.drawing.SvgFile;
import org.midlateral.document.pattern.FlatPattern;
import org.midlateral.document.pattern.PatternDrawing;
import org.midlateral.document.pattern.PatternPages;
import org.midlateral.measurement.Caution;
import org.midlateral.measurement.Design.ClosureKind;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.closure.Closure;
import org.midlateral.mechanics.closure.Strap;
import org.midlateral.relief.Relief;
import org.midlateral.solid.Solid;

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
   * Writes them all.
   *
   * @param order what was asked for
   * @param digit the skin
   * @param relief the bubbles, on a right hand's frame
   * @param solids the pieces, the trough first
   * @param figures of the mechanics
   * @param paper to print on
   */
  public static BenchDocuments of(
      Order order,
      DigitSurface digit,
      Relief relief,
      List<Solid> solids,
      SheetFigures figures,
      PaperSize paper) {
    FlatPattern pattern = FlatPattern.of(order, solids);
    Closure closure = Closure.of(order, digit, relief, solids);
    List<Strap> straps = closure.served() == ClosureKind.STRAP ? closure.straps() : List.of();
    PatternDrawing drawing = new PatternDrawing(pattern, order, digit, straps);
    // In an outline raised letters would look like teeth.
    List<Solid> drawn = solids.stream().map(Solid::withoutRaised).toList();
    String reference = order.measurements().reference();
    Map<String, Content> files = new LinkedHashMap<>();
    files.put(
        "bench-sheet.pdf",
        content(
            PdfFile.bytes(
                new BenchSheet(order, digit, relief, drawn, pattern, closure)
                    .pages(figures, frame(order, paper, "Bench sheet")),
                "Bench sheet, " + reference)));
    String title = "Flat pattern, " + reference;
    List<Page> pages = PatternPages.of(drawing, frame(order, paper, "Flat pattern"));
    files.put("pattern.pdf", content(PdfFile.bytes(pages, title)));
    files.put(
        "patient-page.pdf",
        content(
            PdfFile.bytes(
                PatientPage.of(
                    digit, order.measurements(), drawn, closure, patientFrame(order, paper)),
                "For your finger")));
    for (int i = 0; i < pages.size(); i++) {
      String which = title + ", page " + (i + 1) + " of " + pages.size();
      files.put(svg(i + 1), content(SvgFile.bytes(pages.get(i), which)));
    }
    files.put("pattern.dxf", content(DxfFile.bytes(drawing.sheet())));
    return new BenchDocuments(files, pattern, closure);
  }

  /**
   * The file of a page of the pattern, as large as its paper.
   *
   * @param page counted from 1
   */
  public static String svg(int page) {
    return page == 1 ? "pattern.svg" : "pattern-" + page + ".svg";
  }

  private static Content content(byte[] bytes) {
    return out -> out.write(bytes);
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

  /** Without reference and note: the page is taken home. */
  private static PageFrame patientFrame(Order order, PaperSize paper) {
    Measurements measured = order.measurements();
    String subject = word(measured.hand()) + " hand, " + word(measured.digit()) + " finger";
    return new PageFrame(paper, "For your finger", subject, caution("remove-it"));
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
