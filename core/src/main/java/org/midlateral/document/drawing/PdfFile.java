package org.midlateral.document.drawing;

import static org.midlateral.document.drawing.PdfPen.points;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Calendar;
import java.util.EnumMap;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** Writes pages as a tagged PDF with an embedded typeface, a title and a language. */
public final class PdfFile {
  private final PDDocument document = new PDDocument();
  private final Map<Typeface, PDFont> fonts = new EnumMap<>(Typeface.class);
  private final PdfTags tags = new PdfTags(document);

  private PdfFile() {}

  /** Reads the typefaces, which takes longer than the first page. */
  public static void prepare() {
    Typeface.of(false);
  }

  /**
   * The file.
   *
   * @param pages to write
   * @param title of the document, in English
   */
  public static byte[] bytes(List<Page> pages, String title) {
    PdfFile file = new PdfFile();
    try (PDDocument document = file.document) {
      file.describe(title);
      for (Typeface face : Typeface.values()) {
        file.fonts.put(face, PDType0Font.load(document, face.font(), true));
      }
      for (Page page : pages) {
        file.page(page);
      }
      file.tags.close();
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void describe(String title) {
    PDDocumentInformation about = document.getDocumentInformation();
    about.setTitle(title);
    about.setCreator("midlateral");
    // A fixed date and number: the same pages are the same bytes.
    Calendar fixed = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
    fixed.clear();
    fixed.set(2026, Calendar.JANUARY, 1);
    about.setCreationDate(fixed);
    document.setDocumentId(1L);
    document.getDocumentCatalog().setLanguage("en");
    PDViewerPreferences view =
        new PDViewerPreferences(document.getDocumentCatalog().getCOSObject());
    view.setDisplayDocTitle(true);
    view.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    document.getDocumentCatalog().setViewerPreferences(view);
  }

  private void page(Page page) throws IOException {
    PDRectangle box = new PDRectangle(points(page.paper().width()), points(page.paper().height()));
    PDPage sheet = new PDPage(box);
    document.addPage(sheet);
    try (PDPageContentStream content = new PDPageContentStream(document, sheet)) {
      PdfPen pen = new PdfPen(content, fonts);
      for (Page.Block block : page.blocks()) {
        tags.open(content, sheet, block);
        content.saveGraphicsState();
        if (block.window().isPresent()) {
          Page.PageWindow window = block.window().get();
          content.addRect(
              points(page.left() + window.x()),
              points(page.bottom() + window.y()),
              points(window.width()),
              points(window.height()));
          content.clip();
        }
        pen.draw(block.drawing().moved(page.left() + block.x(), page.bottom() + block.y()));
        content.restoreGraphicsState();
        content.endMarkedContent();
      }
    }
    tags.endPage(sheet);
  }
}
