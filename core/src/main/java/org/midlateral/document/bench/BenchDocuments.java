package org.midlateral.document.bench;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
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
   * Draws them all.
   *
   * @param order what was asked for
   * @param digit the skin
   * @param relief the bubbles, on a right hand's frame
   * @param solids the pieces, the trough first
   * @param pattern the pieces laid flat
   * @param figures of the mechanics
   * @param paper to print on
   */
  public static BenchDocuments of(
      Order order,
      DigitSurface digit,
      Relief relief,
      List<Solid> solids,
      FlatPattern pattern,
      SheetFigures figures,
      PaperSize paper) {
    return withoutSheet(order, digit, relief, solids, pattern, paper)
        .withSheet(order, digit, relief, solids, figures, paper);
  }

  /**
   * Draws those that tell nothing of the mechanics, side by side: all but the bench sheet.
   *
   * @param order what was asked for
   * @param digit the skin
   * @param relief the bubbles, on a right hand's frame
   * @param solids the pieces, the trough first
   * @param pattern the pieces laid flat
   * @param paper to print on
   */
  public static BenchDocuments withoutSheet(
      Order order,
      DigitSurface digit,
      Relief relief,
      List<Solid> solids,
      FlatPattern pattern,
      PaperSize paper) {
    Closure closure = Closure.of(order, digit, relief, solids);
    List<Supplier<Map<String, Content>>> drawings =
        List.of(
            () -> pattern(pattern, closure, order, digit, paper),
            () -> patientPage(digit, drawn(solids), closure, order, paper));
    Map<String, Content> files = new LinkedHashMap<>();
    drawings.parallelStream().map(Supplier::get).toList().forEach(files::putAll);
    return new BenchDocuments(files, pattern, closure);
  }

  /**
   * The same with the bench sheet, of the same order and pieces.
   *
   * @param figures of the mechanics
   */
  public BenchDocuments withSheet(
      Order order,
      DigitSurface digit,
      Relief relief,
      List<Solid> solids,
      SheetFigures figures,
      PaperSize paper) {
    BenchSheet sheet = new BenchSheet(order, digit, relief, drawn(solids), pattern, closure);
    Map<String, Content> all = new LinkedHashMap<>(sheet(sheet, figures, order, paper));
    all.putAll(files);
    return new BenchDocuments(all, pattern, closure);
  }

  /** In an outline raised letters would look like teeth. */
  private static List<Solid> drawn(List<Solid> solids) {
    return solids.stream().map(Solid::withoutRaised).toList();
  }

  private static Map<String, Content> sheet(
      BenchSheet sheet, SheetFigures figures, Order order, PaperSize paper) {
    List<Page> pages = sheet.pages(figures, frame(order, paper, "Bench sheet"));
    String title = "Bench sheet, " + order.measurements().reference();
    return Map.of("bench-sheet.pdf", content(PdfFile.bytes(pages, title)));
  }

  private static Map<String, Content> patientPage(
      DigitSurface digit, List<Solid> drawn, Closure closure, Order order, PaperSize paper) {
    List<Page> pages =
        PatientPage.of(digit, order.measurements(), drawn, closure, patientFrame(order, paper));
    return Map.of("patient-page.pdf", content(PdfFile.bytes(pages, "For your finger")));
  }

  private static Map<String, Content> pattern(
      FlatPattern pattern, Closure closure, Order order, DigitSurface digit, PaperSize paper) {
    List<Strap> straps = closure.served() == ClosureKind.STRAP ? closure.straps() : List.of();
    PatternDrawing drawing = new PatternDrawing(pattern, order, digit, straps);
    Map<String, Content> files = new LinkedHashMap<>();
    String title = "Flat pattern, " + order.measurements().reference();
    List<Page> pages = PatternPages.of(drawing, frame(order, paper, "Flat pattern"));
    files.put("pattern.pdf", content(PdfFile.bytes(pages, title)));
    for (int i = 0; i < pages.size(); i++) {
      String which = title + ", page " + (i + 1) + " of " + pages.size();
      files.put(svg(i + 1), content(SvgFile.bytes(pages.get(i), which)));
    }
    files.put("pattern.dxf", content(DxfFile.bytes(drawing.sheet())));
    return files;
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
