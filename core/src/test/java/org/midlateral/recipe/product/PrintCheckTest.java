package org.midlateral.recipe.product;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Finding.Severity;
import org.midlateral.measurement.Machine;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.MachineFile;
import org.midlateral.measurement.file.Orders;
import org.midlateral.pose.PoseSearch;
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
    assertThat(report.print().criterion()).isEqualTo(PoseSearch.CRITERION);
    assertThat(PoseSearch.CRITERION)
        .contains("400", "counting as " + PrintPose.SKIN_WEIGHT, PrintPose.ALIKE + " mm²");
    assertThat(report.print().parts().values())
        .hasSize(2)
        .allMatch(part -> part.footing() > 0 && part.overhang() == 0 && part.upright() < 10);
  }

  /** Guides ask for more between parts that slide than a filament's process holds. */
  @Test
  void theUsualGapOfFilamentIsToldWhereItIsMissed() {
    assertThat(finding(made("print.process=filament", "material.name=petg"), "print-gap-tight"))
        .satisfies(
            note -> {
              assertThat(note.severity()).isEqualTo(Severity.NOTE);
              assertThat(note.value()).isBetween(0.2, 0.3);
              assertThat(note.text()).contains("0.30 mm");
            });
    assertThat(made().findings()).noneMatch(f -> f.code().equals("print-gap-tight"));
  }

  /** A machine's own limits, bed and shrinkage go before a usual machine's. */
  @Test
  void theMachinesProfileGoesBeforeItsProcess() throws Exception {
    Machine sample =
        MachineFile.read(Path.of("../samples/machines/filament-220.yaml")).machine().orElseThrow();
    Machine low =
        new Machine(
            sample.name(),
            sample.process(),
            sample.limits(),
            new Machine.Bed(220, 220, 20),
            5,
            4,
            0.4,
            0.2,
            0.02);
    List<String> filament = List.of("print.process=filament", "material.name=petg");
    Order order = Orders.read(SAMPLE, filament).order();
    Product product = ProductRecipe.make(order.on(low), List.of());
    // 0.25 mm of its own is held by the gap made, and goes before the guide's 0.3.
    assertThat(product.findings()).noneMatch(f -> f.code().startsWith("print-gap"));
    assertThat(finding(product, "print-bed").text()).contains("filament-220 has room for 220 x");
    assertThat(finding(product, "print-shrinkage").text()).contains("2.04 % larger");
    double plain = length(ProductRecipe.make(order, List.of()));
    assertThat(length(product)).isCloseTo(plain / 0.98, within(1e-3));
  }

  /** Along x, of the trough as it stands in its file (mm). */
  private static double length(Product product) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ProductWriter.files(product, List.of(SolidFormat.STL)).get("trough.stl").writeTo(out);
    ByteBuffer stl = ByteBuffer.wrap(out.toByteArray()).order(ByteOrder.LITTLE_ENDIAN);
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (int t = 0; t < stl.getInt(80); t++) {
      for (int corner = 1; corner <= 3; corner++) {
        double x = stl.getFloat(84 + 50 * t + 12 * corner);
        low = Math.min(low, x);
        high = Math.max(high, x);
      }
    }
    return high - low;
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
