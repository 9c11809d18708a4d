package org.midlateral.document.bench;

import java.util.LinkedHashMap;
import java.util.List;
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
import org.midlateral.measurement.Design.ClosureKind;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.closure.Closure;
import org.midlateral.mechanics.closure.Strap;
import org.midlateral.relief.Relief;
import org.midlateral.solid.Solid;

/**
 * What the files for the bench are drawn from; each can be drawn beside the others.
 *
 * @param order what was asked for
 * @param digit the skin
 * @param relief the bubbles, on a right hand's frame
 * @param solids the pieces, the trough first
 * @param pattern the pieces laid flat
 * @param closure the closures
 * @param paper to print on
 */
public record BenchDrawings(
    Order order,
    DigitSurface digit,
    Relief relief,
    List<Solid> solids,
    FlatPattern pattern,
    Closure closure,
    PaperSize paper) {

  public BenchDrawings {
    solids = List.copyOf(solids);
  }

  /**
   * Lays the pieces flat and lays out the closures.
   *
   * @param order what was asked for
   * @param digit the skin
   * @param relief the bubbles, on a right hand's frame
   * @param solids the pieces, the trough first
   * @param paper to print on
   */
  public static BenchDrawings of(
      Order order, DigitSurface digit, Relief relief, List<Solid> solids, PaperSize paper) {
    return new BenchDrawings(
        order,
        digit,
        relief,
        solids,
        FlatPattern.of(order, solids),
        Closure.of(order, digit, relief, solids),
        paper);
  }

  /**
   * Draws all, one after the other.
   *
   * @param figures of the mechanics
   */
  public BenchDocuments all(SheetFigures figures) {
    return together(List.of(sheet(figures), patternFiles(), patientPage()));
  }

  /**
   * What has been drawn, put together.
   *
   * @param drawn sheet, pattern and patient's page
   */
  public BenchDocuments together(List<Map<String, Content>> drawn) {
    Map<String, Content> files = new LinkedHashMap<>();
    drawn.forEach(files::putAll);
    return new BenchDocuments(files, pattern, closure);
  }

  /**
   * The bench sheet.
   *
   * @param figures of the mechanics
   */
  public Map<String, Content> sheet(SheetFigures figures) {
    BenchSheet sheet = new BenchSheet(order, digit, relief, drawn(), pattern, closure);
    List<Page> pages = sheet.pages(figures, BenchDocuments.frame(order, paper, "Bench sheet"));
    String title = "Bench sheet, " + order.measurements().reference();
    return Map.of("bench-sheet.pdf", content(PdfFile.bytes(pages, title)));
  }

  /** The page for the patient. */
  public Map<String, Content> patientPage() {
    List<Page> pages =
        PatientPage.of(digit, order.measurements(), drawn(), closure, patientFrame());
    return Map.of("patient-page.pdf", content(PdfFile.bytes(pages, "For your finger")));
  }

  /** The flat pattern in all its forms. */
  public Map<String, Content> patternFiles() {
    List<Strap> straps = closure.served() == ClosureKind.STRAP ? closure.straps() : List.of();
    PatternDrawing drawing = new PatternDrawing(pattern, order, digit, straps);
    Map<String, Content> files = new LinkedHashMap<>();
    String title = "Flat pattern, " + order.measurements().reference();
    List<Page> pages = PatternPages.of(drawing, BenchDocuments.frame(order, paper, "Flat pattern"));
    files.put("pattern.pdf", content(PdfFile.bytes(pages, title)));
    for (int i = 0; i < pages.size(); i++) {
      String which = title + ", page " + (i + 1) + " of " + pages.size();
      files.put(BenchDocuments.svg(i + 1), content(SvgFile.bytes(pages.get(i), which)));
    }
    files.put("pattern.dxf", content(DxfFile.bytes(drawing.sheet())));
    return files;
  }

  /** In an outline raised letters would look like teeth. */
  private List<Solid> drawn() {
    return solids.stream().map(Solid::withoutRaised).toList();
  }

  /** Without reference and note: the page is taken home. */
  private PageFrame patientFrame() {
    Measurements measured = order.measurements();
    String subject =
        BenchDocuments.word(measured.hand())
            + " hand, "
            + BenchDocuments.word(measured.digit())
            + " finger";
    return new PageFrame(paper, "For your finger", subject, BenchDocuments.caution("remove-it"));
  }

  private static Content content(byte[] bytes) {
    return out -> out.write(bytes);
  }
}
