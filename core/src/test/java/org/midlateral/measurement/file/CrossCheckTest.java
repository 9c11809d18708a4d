package org.midlateral.measurement.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.midlateral.measurement.EllipsePerimeter;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.Level;

class CrossCheckTest {

  private static Orders.Result with(String... overrides) {
    return Orders.parse(OrdersReadTest.PLAIN, "demo.yaml", Arrays.asList(overrides));
  }

  private static List<String> texts(String... overrides) {
    return with(overrides).errors().stream().map(InputError::message).toList();
  }

  /** Perimeters of ellipses, computed independently with 30 digits; no publication. */
  @ParameterizedTest
  @CsvSource({
    "10, 8, 56.723335777949",
    "8, 10, 56.723335777949",
    "10, 5, 48.4422411027384",
    "5, 3, 25.5269988633981",
    "9, 7.5, 51.9434339685726",
    "9, 1, 36.6878177276102"
  })
  void perimeterOfAnEllipse(double a, double b, double perimeter) {
    assertThat(EllipsePerimeter.of(a, b)).isCloseTo(perimeter, within(1e-11));
  }

  @Test
  void perimeterOfACircleIsExact() {
    assertThat(EllipsePerimeter.of(3, 3)).isCloseTo(6 * Math.PI, within(1e-14));
  }

  @Test
  void refusesAWidthThatNoSectionOfThatCircumferenceHas() {
    // An ellipse 25.9 wide and 0.6 of that deep is 66 around; one 19.1 wide and 1.2 deep as well.
    assertThat(EllipsePerimeter.of(25.86 / 2, 0.6 * 25.86 / 2)).isCloseTo(66, within(0.05));
    assertThat(EllipsePerimeter.of(19.07 / 2, 1.2 * 19.07 / 2)).isCloseTo(66, within(0.05));

    assertThat(with("width.pip=25.8").errors()).isEmpty();
    assertThat(with("width.pip=19.2").errors()).isEmpty();
    assertThat(texts("width.pip=26"))
        .containsExactly(
            "--set: width.pip: 26 mm and a circumference of 66 mm do not fit together in one"
                + " section of a finger; allowed: 19.1 to 25.9 mm for that circumference");
    assertThat(texts("width.pip=19")).hasSize(1);
  }

  @Test
  void cautionsAnUnusualStepAndRefusesAMixUp() {
    assertThat(with("circumference.tip=43.2").cautions()).isEmpty();
    assertThat(with("circumference.tip=43").cautions())
        .extracting(Finding::code, Finding::key)
        .containsExactly(org.assertj.core.groups.Tuple.tuple("unusual-step", "circumference.tip"));
    assertThat(with("circumference.tip=35.1").errors()).isEmpty();
    assertThat(with("circumference.tip=34.9").errors()).hasSize(1);
  }

  @Test
  void holdsTheWidthAtTheWebAgainstTheProximalPhalanx() {
    assertThat(with("width.web=20").cautions()).isEmpty();
    assertThat(with("width.web=28").cautions()).extracting(Finding::key).contains("width.web");
    assertThat(with("width.web=34").errors()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource({
    "station.proximal-phalanx=26, station.proximal-phalanx",
    "station.middle-phalanx=27, station.middle-phalanx",
    "station.middle-phalanx=54, station.middle-phalanx",
    "station.tip=55, station.tip",
    "station.tip=70.5, station.tip",
    "length.dip-to-tip=15, length.dip-to-tip",
  })
  void levelsFollowEachOther(String override, String blamed) {
    assertThat(with(override).errors()).extracting(InputError::key).containsExactly(blamed);
  }

  @Test
  void takesStationsBetweenTheirNeighbours() {
    Orders.Result result =
        with("station.proximal-phalanx=10", "station.middle-phalanx=40", "station.tip=60");

    assertThat(result.errors()).isEmpty();
    assertThat(result.order().measurements().stationOf(Level.TIP)).isEqualTo(60);
  }

  @Test
  void cautionsAWidthThatHasNoUse() {
    assertThat(with("width.dip=17").cautions()).extracting(Finding::code).contains("unused-width");
    assertThat(with("width.dip=17", "circumference.dip=52").cautions()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "pa12, powder, true",
    "pa12, filament, false",
    "petg, powder, false",
    "petg, filament, true",
    "pla, resin, false",
    "pp, powder, true",
    "pp, filament, true",
    "photopolymer, resin, true",
    "photopolymer, powder, false",
    "low-temperature-sheet, powder, true",
    "low-temperature-sheet, filament, false",
  })
  void cautionsAProcessTheMaterialIsNotPrintedBy(String material, String process, boolean goes) {
    List<Finding> cautions =
        with("material.name=" + material, "print.process=" + process).cautions();
    if (goes) {
      assertThat(cautions).isEmpty();
    } else {
      assertThat(cautions)
          .extracting(Finding::code, Finding::key)
          .containsExactly(
              org.assertj.core.groups.Tuple.tuple("process-and-material", "print.process"));
    }
  }

  @Test
  void aMouldedSheetHasNoProcess() {
    assertThat(with("material.name=low-temperature-sheet").cautions()).isEmpty();
    assertThat(
            with("material.name=low-temperature-sheet", "print.process=resin")
                .cautions()
                .get(0)
                .text())
        .contains("moulded by hand and not printed");
  }

  /** By hand the process is of no matter, and the material is a sheet where none is stated. */
  @ParameterizedTest
  @CsvSource({
    "hand, pa12, false",
    "hand, low-temperature-sheet, true",
    "print, low-temperature-sheet, false",
    "print, pa12, true",
    "auto, low-temperature-sheet, true",
  })
  void cautionsAMaterialThatIsNotMadeSo(String making, String material, boolean goes) {
    List<Finding> cautions = with("making=" + making, "material.name=" + material).cautions();
    assertThat(cautions)
        .extracting(Finding::code)
        .isEqualTo(goes ? List.of() : List.of("making-and-material"));
    // Either of the two that the caution names settles it.
    for (Finding caution : cautions) {
      Matcher named = Pattern.compile("[a-z.]+=[a-z0-9-]+").matcher(caution.text());
      List<String> settings = named.results().map(MatchResult::group).toList();
      assertThat(settings).hasSize(2);
      for (String setting : settings) {
        assertThat(with("making=" + making, "material.name=" + material, setting).cautions())
            .isEmpty();
      }
    }
    assertThat(with("making=hand", "material.name=pa12", "material.modulus=500").cautions())
        .isEmpty();
    assertThat(
            with("making=hand", "material.name=low-temperature-sheet", "print.process=resin")
                .cautions())
        .isEmpty();
  }

  @Test
  void namesTheProcessTheMaterialIsPrintedBy() {
    assertThat(with("material.name=petg").cautions().get(0).text())
        .contains("petg is not usually printed by powder, but by filament;");
    assertThat(with("material.name=petg", "material.modulus=1800").cautions()).isEmpty();
  }

  @Test
  void cautionsValuesOutsideTheUsualRange() {
    Finding finding = with("trough.wrap=0.4").cautions().get(0);

    assertThat(finding)
        .isEqualTo(
            Finding.caution(
                "unusual-value",
                "trough.wrap",
                "trough.wrap: 0.4 is unusual; 0.45 to 0.55 is usual.",
                0.4,
                0.45));
    assertThat(with("trough.vents.diameter=0", "trough.wrap=0.45").cautions()).isEmpty();
  }
}
