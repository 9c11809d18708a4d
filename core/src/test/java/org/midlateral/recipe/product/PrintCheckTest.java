package org.midlateral.recipe.product;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Finding.Severity;
import org.midlateral.measurement.file.Orders;
import org.midlateral.pose.PrintPose;
import org.midlateral.recipe.Report;

class PrintCheckTest {
  private static final Path SAMPLE = Path.of("..", "samples", "slim-little.yaml");

  @Test
  void aWallAndAGapUnderWhatTheProcessHoldsAreTold() {
    Product product =
        made(
            "print.process=filament",
            "material.name=petg",
            "trough.wall=0.8",
            "dorsal-shell.fit-gap=0.15");
    assertThat(cautions(product)).extracting(Finding::code).contains("print-wall", "print-gap");
    Finding wall = finding(product, "print-wall");
    assertThat(wall.value()).isLessThan(0.8).isCloseTo(0.8, within(0.03));
    assertThat(wall.limit()).isEqualTo(0.8);
    assertThat(wall.text()).contains("trough", "0.4 mm nozzle");
  }

  @Test
  void whatTheProcessHoldsIsNotTold() {
    assertThat(cautions(made()))
        .extracting(Finding::code)
        .doesNotContain("print-wall", "print-gap");
  }

  /** A piece that grows upward from the bed is told of where it stands narrow and on end. */
  @Test
  void footingAndLayersAreNotesForFilamentAlone() {
    Product filament = made("print.process=filament", "material.name=petg");
    assertThat(filament.ok()).isTrue();
    Finding footing = finding(filament, "print-footing");
    assertThat(footing.severity()).isEqualTo(Severity.NOTE);
    assertThat(footing.text()).contains("brim");
    assertThat(finding(filament, "print-layers").text()).contains("across the finger's length");
    assertThat(made().findings()).noneMatch(f -> f.code().startsWith("print-"));
  }

  @Test
  void theReportStatesTheCriterionAndEachPose() {
    Report report = ProductReport.of(made(), List.of(), Optional.empty());
    assertThat(report.print().criterion()).isEqualTo(PrintPose.CRITERION);
    assertThat(PrintPose.CRITERION)
        .contains("400", "counting as " + PrintPose.SKIN_WEIGHT, PrintPose.ALIKE + " mm²");
    assertThat(report.print().parts().values())
        .hasSize(2)
        .allMatch(part -> part.footing() > 0 && part.overhang() == 0 && part.upright() < 10);
  }

  private static Product made(String... overrides) {
    List<String> all =
        Stream.concat(Stream.of("dorsal-shell.make=yes"), Stream.of(overrides)).toList();
    Orders.Result read = Orders.read(SAMPLE, all);
    assertThat(read.errors()).isEmpty();
    return ProductRecipe.make(read.order(), read.cautions());
  }

  private static List<Finding> cautions(Product product) {
    return product.findings().stream().filter(f -> f.severity() == Severity.CAUTION).toList();
  }

  private static Finding finding(Product product, String code) {
    return product.findings().stream().filter(f -> f.code().equals(code)).findFirst().orElseThrow();
  }
}
