package org.midlateral.document.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.digit.NailPlate;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.measurement.Design.ClosureKind;
import org.midlateral.measurement.Measurements;
import org.midlateral.mechanics.closure.Closure;
import org.midlateral.recipe.Orthosis;

class PatientPageTest {
  /** A child of 12 is in the sixth grade. */
  private static final double GRADE = 6;

  private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");

  /**
   * The grade level of Kincaid, Fishburne, Rogers and Chissom (1975), Derivation of new readability
   * formulas for Navy enlisted personnel, 0.39 words a sentence + 11.8 syllables a word - 15.59;
   * the constants from memory. Syllables are groups of vowels, a silent e at the end left out.
   */
  private static double grade(List<String> sentences) {
    List<String> words =
        sentences.stream()
            .flatMap(s -> Arrays.stream(s.toLowerCase(Locale.ROOT).split("[^a-z0-9]+", -1)))
            .filter(word -> !word.isEmpty())
            .toList();
    double syllables = words.stream().mapToInt(PatientPageTest::syllables).sum();
    double count = words.size();
    return 0.39 * count / sentences.size() + 11.8 * syllables / count - 15.59;
  }

  private static int syllables(String word) {
    String heard = word.matches(".*[^l]e") ? word.substring(0, word.length() - 1) : word;
    return (int) Math.max(1, VOWELS.matcher(heard).results().count());
  }

  /** The formula tells plain words from others. */
  @Test
  void theFormulaTellsHardWords() {
    assertThat(grade(List.of("The cat sat on the mat."))).isLessThan(1);
    assertThat(
            grade(
                List.of(
                    "Persistent erythema necessitates immediate discontinuation of the orthosis and"
                        + " professional consultation.")))
        .isGreaterThan(12);
  }

  @ParameterizedTest
  @EnumSource(ClosureKind.class)
  void aChildOfTwelveCanReadIt(ClosureKind kind) {
    List<String> sentences =
        new PatientWords(true, kind, 2)
            .all().stream().flatMap(advice -> advice.sentences().stream()).toList();
    assertThat(grade(sentences)).isLessThan(GRADE);
    // Nor is a single sentence long.
    assertThat(sentences).allMatch(s -> s.split(" ", -1).length <= 18);
  }

  /** On one side, above the foot, without the reference or the note. */
  @ParameterizedTest
  @CsvSource({
    "bulbous-ring, closure.kind=wrap, dorsal-shell.make=yes",
    "middle-inches, closure.kind=strap, dorsal-shell.make=yes",
    "left-deficit, closure.kind=sleeve, dorsal-shell.make=no",
    "covered-tip, closure.kind=tape, dorsal-shell.make=yes",
    "slim-little, closure.kind=wrap, dorsal-shell.make=no",
  })
  void itIsOneSideWithoutAName(String sample, String closure, String shell) throws Exception {
    var orthosis = BenchFiles.orthosis(sample, closure, shell, "note=thin skin");
    byte[] pdf = BenchFiles.bytes(BenchFiles.of(orthosis), "patient-page.pdf");
    PagesTest.check("patient", pdf);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      assertThat(text)
          .contains("Put it on", "Take it off at once", "Next visit: ____", "Phone: ____")
          .doesNotContain(orthosis.order().measurements().reference(), "thin skin");
      String all =
          new PatientWords(orthosis.solids().size() > 1, served(orthosis), 1)
              .all().stream()
                  .flatMap(advice -> advice.sentences().stream())
                  .collect(Collectors.joining(" "));
      assertThat(text.replace(" ", "")).contains(all.split("\\.", 2)[0].replace(" ", ""));
    }
  }

  /** The nail is drawn over the dorsal half past the last crease, and ends before the tip. */
  @ParameterizedTest
  @ValueSource(strings = {"bulbous-ring", "middle-inches", "left-deficit", "slim-little"})
  void theNailTellsTheTip(String sample) throws Exception {
    Orthosis made = BenchFiles.orthosis(sample);
    Measurements measured = made.order().measurements();
    Views side = Views.fromTheSide(made.digit());
    double dip = measured.webToPip() + measured.pipToDip();
    double crease = side.crease(dip).get(0).x();
    double tip = made.digit().centre(made.digit().pulpEnd()).getX();
    for (PointMark p : side.nail(NailPlate.of(measured, made.digit()))) {
      double station = Math.min(made.digit().pulpEnd(), p.x());
      assertThat(p.x()).isBetween(crease + 3, tip);
      assertThat(p.y()).isGreaterThan(made.digit().centre(station).getZ());
    }
    for (PointMark p : side.crease(dip)) {
      assertThat(p.y()).isLessThan(made.digit().centre(dip).getZ());
    }
  }

  private static ClosureKind served(Orthosis o) {
    return Closure.of(o.order(), o.digit(), o.relief(), o.solids()).served();
  }
}
