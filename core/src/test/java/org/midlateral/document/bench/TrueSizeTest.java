package org.midlateral.document.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.midlateral.document.drawing.PageFrame;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.document.drawing.Pixels;
import org.midlateral.document.pattern.Blank;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.recipe.Orthosis;

/** Renders the pattern's files and measures them as one would with a ruler. */
class TrueSizeTest {
  /** Thinner than the cutting line, thicker than any other (mm). */
  private static final double HEAVY = 0.5;

  @ParameterizedTest
  @CsvSource({"bulbous-ring, MM", "middle-inches, IN"})
  void thePrintedPageIsTrue(String sample, LengthUnit unit) throws Exception {
    Orthosis orthosis = BenchFiles.orthosis(sample);
    BenchDocuments documents = BenchFiles.of(orthosis);
    Pixels page = Pixels.ofPdf(BenchFiles.bytes(documents, "pattern.pdf"), 0);
    PaperSize paper = PaperSize.usualWith(unit);
    assertThat(page.width()).isCloseTo(paper.width(), within(0.1));
    assertThat(page.height()).isCloseTo(paper.height(), within(0.1));

    double left = (paper.width() - PaperSize.USED_WIDTH) / 2;
    double bottom = (paper.height() - PaperSize.USED_HEIGHT) / 2;
    PageFrame frame = BenchDocuments.frame(orthosis.order(), paper, "");
    bars(page, left, bottom + frame.bottom(), unit);
    double top = bottom + frame.top() - 7;
    blank(page, documents.pattern().blank(), orthosis, left + 25, top);
  }

  /** The bars lie 2 mm right of the corner's left, 3 mm above the foot; two inches are 50.8 mm. */
  private static void bars(Pixels page, double left, double foot, LengthUnit unit) {
    double length = unit == LengthUnit.IN ? 50.8 : 50;
    double x = left + 2;
    double y = foot + 3;
    var across = page.alongX(y + 1.6, x - 2, x + 53, 0.3);
    assertThat(across.get(across.size() - 1) - across.get(0)).isCloseTo(length, within(0.1));
    var up = page.alongY(x + 1.6, y - 2, y + 53, 0.3);
    assertThat(up.get(up.size() - 1) - up.get(0)).isCloseTo(length, within(0.1));
  }

  private static void blank(
      Pixels page, Blank blank, Orthosis orthosis, double edge, double expected) {
    double beside = edge + blank.width() / 4;
    double top = page.alongY(beside, expected - 1, expected + 1, HEAVY).get(0);
    // Half-way between the end of the pulp and the upper edge there is nothing but the outline.
    double y = top - Blank.PAST_END / 2;
    var sides = page.alongX(y, edge - 3, edge + blank.width() + 3, HEAVY);
    assertThat(sides).hasSize(2);
    assertThat(sides.get(1) - sides.get(0)).isCloseTo(blank.width(), within(0.2));
    double tongue = (sides.get(0) + sides.get(1)) / 2 + 3;
    var ends = page.alongY(tongue, top - blank.length() - 3, top + 1, HEAVY);
    assertThat(ends.get(ends.size() - 1) - ends.get(0)).isCloseTo(blank.length(), within(0.2));
    assertThat(blank.length())
        .isCloseTo(
            orthosis.order().measurements().palmarCreaseToWeb()
                + orthosis.digit().pulpEnd()
                + Blank.PAST_END,
            within(1e-9));
  }

  /** Each page is a file as large as the paper, drawn as the printed page is. */
  @ParameterizedTest
  @CsvSource({
    "bulbous-ring, MM, paper=auto, A4",
    "middle-inches, IN, paper=auto, LETTER",
    "slim-little, MM, paper=letter, LETTER",
    "middle-inches, IN, paper=a4, A4"
  })
  void theScreensPagesAreTrue(String sample, LengthUnit unit, String override, PaperSize paper)
      throws Exception {
    Orthosis orthosis = BenchFiles.orthosis(sample, override);
    BenchDocuments documents = BenchFiles.of(orthosis);
    PageFrame frame = BenchDocuments.frame(orthosis.order(), paper, "");
    byte[] pdf = BenchFiles.bytes(documents, "pattern.pdf");
    int pages = 0;
    while (documents.files().containsKey(BenchDocuments.svg(pages + 1))) {
      byte[] svg = BenchFiles.bytes(documents, BenchDocuments.svg(++pages));
      Pixels page = Pixels.ofSvg(svg);
      assertThat(page.width()).isCloseTo(paper.width(), within(0.1));
      assertThat(page.height()).isCloseTo(paper.height(), within(0.1));
      String text = new String(svg, StandardCharsets.UTF_8);
      assertThat(text.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " "))
          .contains(PageFrame.WARNING, "page " + pages + " of ");
      // Whatever typeface a reader has, no text grows wider than it was laid out.
      assertThat(text.split("<text ", -1)).hasSameSizeAs(text.split("textLength=\"[1-9]", -1));
    }
    try (PDDocument printed = Loader.loadPDF(pdf)) {
      assertThat(pages).isEqualTo(printed.getNumberOfPages());
    }
    Pixels first = Pixels.ofSvg(BenchFiles.bytes(documents, "pattern.svg"));
    double left = (paper.width() - PaperSize.USED_WIDTH) / 2;
    double bottom = (paper.height() - PaperSize.USED_HEIGHT) / 2;
    bars(first, left, bottom + frame.bottom(), unit);
    blank(first, documents.pattern().blank(), orthosis, left + 25, bottom + frame.top() - 7);
  }
}
