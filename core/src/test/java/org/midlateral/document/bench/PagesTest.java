package org.midlateral.document.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.document.drawing.PageFrame;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.document.drawing.Pixels;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.recipe.Orthosis;

/** What every page must hold: selectable text, the warning, nothing cut, nothing overlapping. */
class PagesTest {

  /** Runs of text on the pages, with their boxes in points. */
  private static final class Boxes extends PDFTextStripper {
    final List<List<Box>> pages = new ArrayList<>();

    record Box(String text, double x0, double y0, double x1, double y1) {
      boolean overlaps(Box o) {
        double slack = 0.6;
        return x0 + slack < o.x1 && o.x0 + slack < x1 && y0 + slack < o.y1 && o.y0 + slack < y1;
      }
    }

    Boxes() throws IOException {
      super();
    }

    @Override
    protected void startPage(PDPage page) {
      pages.add(new ArrayList<>());
    }

    @Override
    protected void writeString(String text, List<TextPosition> at) {
      // A run set at a slope is one word; capital height is about 0.71 of the size.
      TextPosition first = at.get(0);
      TextPosition last = at.get(at.size() - 1);
      double size = first.getFontSizeInPt();
      if (first.getDir() == 0) {
        pages
            .get(pages.size() - 1)
            .add(
                new Box(
                    text,
                    first.getX(),
                    first.getY() - 0.71 * size,
                    last.getX() + last.getWidth(),
                    first.getY()));
      } else {
        double y = first.getPageHeight() - first.getY();
        double x = first.getX();
        assertThat(x).isPositive();
        assertThat(y).isPositive();
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "bulbous-ring, closure.kind=wrap, trough.wrap=0.5",
    "bulbous-ring, closure.kind=strap, trough.wrap=0.45",
    "middle-inches, closure.kind=strap, trough.wrap=0.5",
    "left-deficit, closure.kind=sleeve, trough.wrap=0.45",
    "covered-tip, closure.kind=tape, trough.wrap=0.5",
    "slim-little, closure.kind=wrap, trough.liner=1",
    "left-deficit, closure.kind=strap, material.name=tpu-95a",
    "middle-inches, closure.kind=wrap, material.name=pcl",
    "bulbous-ring, making=hand, room.swelling=2.5",
    "middle-inches, making=hand, closure.kind=tape",
    "bulbous-ring, print.process=resin, material.name=photopolymer",
    "middle-inches, room.radial=1/16, room.swelling=1/16",
  })
  void everyPageIsWhole(String sample, String closure, String other) throws Exception {
    BenchDocuments documents = BenchFiles.of(BenchFiles.orthosis(sample, closure, other));
    for (String name : List.of("bench-sheet.pdf", "pattern.pdf")) {
      check(name, BenchFiles.bytes(documents, name));
    }
  }

  /** Tape is for the shell: where that is missing the sheet gives the wrap that serves instead. */
  @Test
  void withoutAShellAWrapServesInsteadOfTape() throws Exception {
    assertThat(sheet("covered-tip", "closure.kind=tape"))
        .contains("Adhesive tape", "fit the closure: tape.")
        .doesNotContain("Elastic wrap");
    Orthosis without =
        BenchFiles.orthosis("covered-tip", "closure.kind=tape", "dorsal-shell.length=90");
    assertThat(without.missing()).isPresent();
    assertThat(text(without))
        .contains("it lies on the skin", "Elastic wrap", "elastic wrap, no tape")
        .doesNotContain("Adhesive tape");
  }

  /** The longest notes there may be, of the widest signs and of scripts that the typeface lacks. */
  @ParameterizedTest
  @ValueSource(
      strings = {"W", "\u2014", "中", "→ ✓ ", "שלום ", "مرحبا ", "ไทย ", "\ud83d\ude00", "word "})
  void aPageWithALongNoteIsWhole(String sign) throws Exception {
    String note = sign.repeat(120 / sign.length()).strip();
    BenchDocuments documents =
        BenchFiles.of(
            BenchFiles.orthosis("slim-little", "note=" + note, "reference=" + "M".repeat(40)));
    for (String name : List.of("bench-sheet.pdf", "pattern.pdf")) {
      check(name, BenchFiles.bytes(documents, name));
    }
  }

  /** Who moulds it and who prints it each get the steps and cautions of their own way alone. */
  @Test
  void theSheetIsOfOneWayOfMaking() throws Exception {
    String printed = sheet("bulbous-ring", "material.name=pa12");
    assertThat(printed)
        .contains("Steps, from the printer to the finger", "loose powder", "wall of 1.6 mm")
        .contains("A printed material is fit for skin contact only", "more relief there")
        .doesNotContain("mould", "Warm", "putty", "over sheet", "in the flat", "55 °C");
    String moulded = sheet("bulbous-ring", "making=hand");
    assertThat(text(BenchFiles.orthosis("bulbous-ring", "making=hand", "material.name=pcl")))
        .contains("Steps, to mould it by hand")
        .doesNotContain("A printed material");
    assertThat(moulded)
        .contains("Steps, to mould it by hand", "Steps, for the dorsal piece by hand")
        .contains("Low-temperature thermoplastic sheet", "over sheet", "in the flat")
        .contains("softens at about 55 °C", "gives way slowly", "The sheet, as its maker says")
        .doesNotContain("print", "powder", "support");
  }

  /** Both pages and the steps tell of the order's own closure, and none of another. */
  @ParameterizedTest
  @CsvSource({
    "closure.kind=wrap, elastic wrap, tape",
    "closure.kind=sleeve, sleeve, tape",
    "closure.kind=tape, tape, elastic wrap",
  })
  void theStepsNameTheClosureOfTheOrder(String closure, String named, String other)
      throws Exception {
    String sheet = text(BenchFiles.orthosis("middle-inches", "making=hand", closure));
    String steps = sheet.substring(sheet.indexOf("Steps, for the dorsal piece by hand"));
    assertThat(steps).contains("Fit the closure over both, as page 1 says: " + named + ".");
    assertThat(sheet.replace("tape in layers", "")).doesNotContain(" " + other);
  }

  /** Of the mechanics there is the angle, the place that is pressed most, and the forces. */
  @Test
  void theSheetSaysLittleOfMechanics() throws Exception {
    assertThat(sheet("bulbous-ring", "closure.kind=wrap"))
        .contains("Held 3° (1 to 6°) short of full extension.")
        .contains(
            "Forces: 1.3 N at the proximal end, 2.6 N over the PIP joint, 1.2 N at the distal")
        .contains(
            "Highest pressure: 11 kPa under the dorsal shell over the PIP joint, radial" + " side.")
        .doesNotContain("MPa", "EI", "N·m", "mmHg (");
  }

  /** No word on a sheet is one of the file's keys, of how it was computed or where from. */
  @ParameterizedTest
  @CsvSource({
    "bulbous-ring, making=print, closure.kind=strap",
    "bulbous-ring, making=hand, dorsal-shell.make=no",
    "middle-inches, making=hand, closure.kind=sleeve",
    "covered-tip, closure.kind=tape, dorsal-shell.length=90",
    "slim-little, relief.make=no, closure.kind=wrap",
    "left-deficit, trough.wrap=0.45, room.radial=1",
  })
  void theSheetsNameNoKeys(String sample, String first, String second) throws Exception {
    BenchDocuments documents = BenchFiles.of(BenchFiles.orthosis(sample, first, second));
    for (String name : List.of("bench-sheet.pdf", "pattern.pdf", "patient-page.pdf")) {
      String text = text(documents, name);
      for (InputKey key : KeyTable.standard().keys()) {
        if (key.path().contains(".")) {
          assertThat(text).as(name).doesNotContain(key.path());
        }
      }
      assertThat(text).as(name).doesNotContain("seed", "from memory");
      assertThat(text.replaceAll("at 100 %|4[0-9] % of the girth|[0-9]+ % of its modulus", ""))
          .as("%s has no strain in it", name)
          .doesNotContainPattern("[0-9] %(?! when worn)");
    }
  }

  /** What swelling is allowed for is told in the marks; a quarter of it lies on each. */
  @Test
  void theMarksTellTheAllowance() throws Exception {
    // Round the PIP joint 70 mm: a quarter of 70, and of 74.
    assertThat(sheet("bulbous-ring", "room.swelling=0"))
        .contains("PIP axis 26.5 70 23 17.5 ")
        .doesNotContain("made for", "They allow for swelling");
    assertThat(sheet("bulbous-ring", "room.swelling=4"))
        .contains("PIP axis 26.5 70 23 74 18.5 ", "made for")
        .contains("They allow for swelling, 4 mm of every girth");
    assertThat(text(BenchFiles.orthosis("bulbous-ring", "making=hand", "room.swelling=4")))
        .contains("To leave room for swelling, wind the finger evenly, 0.6 mm thick");
  }

  @Test
  void aClosureBeginsWithWhatToUse() throws Exception {
    assertThat(sheet("bulbous-ring", "closure.kind=strap"))
        .contains("Closure Elastic wrap 25 mm wide, about 37 cm of it: 4 turns.")
        .contains("A strap over the PIP joint is not advised");
    assertThat(sheet("middle-inches", "closure.kind=wrap"))
        .containsPattern(
            "Closure Elastic wrap 5/8 in wide, about [0-9]+( 1/2)? in of it: [0-9]+ turns");
  }

  private static String sheet(String sample, String override) throws Exception {
    return text(BenchFiles.orthosis(sample, override));
  }

  private static String text(Orthosis orthosis) throws IOException {
    return text(BenchFiles.of(orthosis), "bench-sheet.pdf");
  }

  private static String text(BenchDocuments documents, String name) throws IOException {
    byte[] pdf = BenchFiles.bytes(documents, name);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  @Test
  void theFormIsWhole() throws IOException {
    check("form", MeasuringForm.pdf(LengthUnit.IN, PaperSize.LETTER));
    check("form", MeasuringForm.pdf(LengthUnit.MM, PaperSize.A4));
  }

  static void check(String name, byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(document.getDocumentInformation().getTitle()).isNotBlank();
      assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
      assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
      assertThat(document.getNumberOfPages()).isBetween(1, name.startsWith("bench") ? 3 : 6);
      Boxes boxes = new Boxes();
      boxes.getText(document);
      for (int p = 0; p < document.getNumberOfPages(); p++) {
        PDFTextStripper one = new PDFTextStripper();
        one.setStartPage(p + 1);
        one.setEndPage(p + 1);
        assertThat(one.getText(document)).contains(PageFrame.WARNING, "page " + (p + 1) + " of ");
        embedded(document.getPage(p));
        apart(name, boxes.pages.get(p));
        assertThat(
                Pixels.ofPdf(pdf, p, 60).drawnOutside(PaperSize.USED_WIDTH, PaperSize.USED_HEIGHT))
            .as("%s page %d stays within both papers", name, p + 1)
            .isFalse();
      }
    }
  }

  private static void embedded(PDPage page) throws IOException {
    for (COSName font : page.getResources().getFontNames()) {
      assertThat(page.getResources().getFont(font).isEmbedded()).isTrue();
    }
  }

  private static void apart(String name, List<Boxes.Box> boxes) {
    for (int i = 0; i < boxes.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertThat(boxes.get(i).overlaps(boxes.get(j)))
            .as("%s: '%s' over '%s'", name, boxes.get(i).text(), boxes.get(j).text())
            .isFalse();
      }
    }
  }

  @Test
  void theSameOrderIsTheSameBytes() throws Exception {
    BenchDocuments once = BenchFiles.of(BenchFiles.orthosis("slim-little"));
    BenchDocuments again = BenchFiles.of(BenchFiles.orthosis("slim-little"));
    assertThat(once.files().keySet())
        .containsExactly(
            "bench-sheet.pdf",
            "pattern.pdf",
            "pattern.svg",
            "pattern-2.svg",
            "pattern.dxf",
            "patient-page.pdf");
    for (String name : once.files().keySet()) {
      boolean same = Arrays.equals(BenchFiles.bytes(again, name), BenchFiles.bytes(once, name));
      assertThat(same).as(name).isTrue();
    }
  }

  @Test
  void aBlankLargerThanThePageIsTiled() throws Exception {
    BenchDocuments documents =
        BenchFiles.of(
            BenchFiles.orthosis(
                "bulbous-ring",
                "circumference.pip=112",
                "circumference.proximal-phalanx=108",
                "circumference.middle-phalanx=100",
                "circumference.dip=92",
                "circumference.tip=88",
                "width.pip=36",
                "length.web-to-pip=40",
                "length.pip-to-dip=36",
                "length.dip-to-tip=40",
                "length.palmar-crease-to-web=30",
                "trough.liner=3",
                "trough.wall=3",
                "dorsal-shell.make=no"));
    byte[] pdf = BenchFiles.bytes(documents, "pattern.pdf");
    try (PDDocument document = Loader.loadPDF(pdf)) {
      String text = new PDFTextStripper().getText(document);
      assertThat(text).contains("part 1 of ", "part 2 of ", "lay the crosses on one another");
    }
    check("pattern", pdf);
  }
}
