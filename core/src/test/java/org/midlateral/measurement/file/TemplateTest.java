package org.midlateral.measurement.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.midlateral.document.bench.MeasuringForm;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.Design.Making;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;

/** The template: what is asked first, and what stays out of sight. */
class TemplateTest {
  private static final String LINE = "# ---- Enough to begin with.";

  /** The first question and the unit, the eleven that a file must state, then the line. */
  @ParameterizedTest
  @EnumSource(Making.class)
  void whatAFileMustStateComesFirst(Making making) {
    String text = Template.text(LengthUnit.MM, making);
    String first = text.substring(0, text.indexOf(LINE));
    List<String> names =
        first
            .lines()
            .filter(line -> line.matches(" *[a-z][a-z-]*: \\S.*"))
            .map(line -> line.strip().replaceAll(":.*", ""))
            .toList();
    assertThat(names)
        .containsExactly(
            "making",
            "unit",
            "reference",
            "hand",
            "digit",
            "proximal-phalanx",
            "pip",
            "middle-phalanx",
            "tip",
            "palmar-crease-to-web",
            "web-to-pip",
            "pip-to-dip",
            "dip-to-tip");
    assertThat(text.substring(text.indexOf(LINE)))
        .contains("note:", "angle:", "trough:")
        .doesNotContain("\nmaking:", "\nreference:", "\ncircumference:", "\nlength:");
  }

  /** It is told how an optional reading is filled in, and so filled in it is read. */
  @Test
  void anOptionalReadingIsFilledInByTakingItsSignAway() {
    String text = Template.text(LengthUnit.MM, Making.HAND);
    assertThat(text.substring(0, text.indexOf("\nmaking:")))
        .contains("# A line that begins with # is not read", "as #dip: below, take away the #");
    assertThat(Orders.parse(text, "t", List.of()).order().measurements().circumference())
        .doesNotContainKey(Level.DIP);

    String filled = text.replaceFirst("\n  #dip: ", "\n  dip: 55 ");
    Orders.Result read = Orders.parse(filled, "t", List.of());
    assertThat(read.errors()).isEmpty();
    assertThat(read.order().measurements().circumference()).containsEntry(Level.DIP, 55.0);
  }

  /** What is left out can still be stated. */
  @Test
  void byHandTheKeysOfThePrinterAreOutOfSight() {
    String byHand = Template.text(LengthUnit.MM, Making.HAND);
    String printed = Template.text(LengthUnit.MM, Making.PRINT);
    List<InputKey> printers =
        KeyTable.standard().keys().stream().filter(key -> !key.isFor("hand")).toList();
    assertThat(printers).extracting(InputKey::path).contains("print.process", "print.label");
    for (InputKey key : printers) {
      String comment = key.comment().substring(0, 30);
      assertThat(printed).contains(comment);
      assertThat(byHand).doesNotContain(comment, "\nprint:");
    }
    assertThat(byHand).contains("\nmaking: hand ", "template --making print");
    assertThat(printed).contains("\nmaking: print ", "template --making hand");

    Orders.Result read = Orders.parse(byHand, "hand.yaml", List.of("print.label=yes"));
    assertThat(read.errors()).isEmpty();
    assertThat(read.cautions()).isEmpty();
    assertThat(read.order().byHand()).isTrue();
  }

  /** Who says that he moulds gets a sheet and no clearance, though he state neither. */
  @Test
  void byHandTheDefaultsAreThoseOfASheet() {
    Design said = Orders.parse(OrdersReadTest.PLAIN, "t", List.of("making=hand")).order().design();
    assertThat(said.material().name()).isEqualTo("low-temperature-sheet");
    assertThat(said.trough().clearance()).isZero();
    Design own =
        Orders.parse(OrdersReadTest.PLAIN, "t", List.of("making=hand", "trough.clearance=0.2"))
            .order()
            .design();
    assertThat(own.trough().clearance()).isEqualTo(0.2);

    Order left = Orders.parse(OrdersReadTest.PLAIN, "t", List.of()).order();
    assertThat(left.byHand()).isFalse();
    assertThat(left.design().material().name()).isEqualTo("pa12");
    Order sheet =
        Orders.parse(OrdersReadTest.PLAIN, "t", List.of("material.name=low-temperature-sheet"))
            .order();
    assertThat(sheet.byHand()).isTrue();
    assertThat(sheet.design().trough()).isEqualTo(left.design().trough());
  }

  /** Each reading of the form is found in the file by its letter, and the other way round. */
  @Test
  void theLettersAreThoseOfTheForm() throws Exception {
    String text = Template.text(LengthUnit.MM);
    String form;
    try (PDDocument pdf = Loader.loadPDF(MeasuringForm.pdf(LengthUnit.MM, PaperSize.A4))) {
      form = new PDFTextStripper().getText(pdf);
    }
    assertThat(form).contains("First of all: the pieces are", "moulded by hand", "printed");
    List<InputKey> lettered =
        KeyTable.standard().keys().stream().filter(key -> key.letter().isPresent()).toList();
    assertThat(lettered).hasSizeGreaterThan(15);
    for (InputKey key : lettered) {
      String letter = key.letter().get();
      assertThat(text.replaceAll("\\s*\\n\\s*#\\s*", " "))
          .contains("(" + letter + ") " + key.comment());
      assertThat(form).containsPattern("(?m)^" + letter + "  ?\\p{L}");
    }
  }
}
