package org.midlateral.recipe.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.recipe.batch.BatchSettings.RunOption;
import org.midlateral.recipe.batch.Outcome.OrderState;
import org.midlateral.recipe.record.FolderCheck;
import org.midlateral.recipe.record.MakingRecord;
import org.midlateral.shared.SharedData;

/** What a batch writes into parts, files and report. */
class BatchOptionsTest {
  @TempDir Path folder;

  /** Reference, hand, digit, part, revision and commit, on the part's label and in its files. */
  @Test
  void partsKnowTheirOrder() throws Exception {
    String build = SharedData.build();
    run(List.of(), InventedOrders.row("inv-a", 0));
    Path home = folder.resolve("out/inv-a");
    byte[] stl = Files.readAllBytes(home.resolve("trough.stl"));
    String title = "inv-a right ring trough r1 " + build;
    assertThat(new String(stl, 0, 80, StandardCharsets.US_ASCII)).startsWith("mm: " + title);
    try (ZipFile zip = new ZipFile(home.resolve("orthosis.3mf").toFile())) {
      String model =
          new String(
              zip.getInputStream(zip.getEntry("3D/3dmodel.model")).readAllBytes(),
              StandardCharsets.UTF_8);
      assertThat(model)
          .contains("name=\"" + title + "\"", ">inv-a right ring r1<")
          .contains("midlateral " + SharedData.version() + "+" + build + "<");
    }
    MakingRecord record = MakingRecord.in(home).orElseThrow();
    assertThat(record.labels()).isEqualTo(Map.of("trough", "inv-a"));
    CSVRecord row = report().get(0);
    assertThat(row.get("label")).isEqualTo("inv-a");
    assertThat(row.get("revision")).isEqualTo("1");
    assertThat(row.get("material")).isEqualTo(record.figures().material());
    assertThat(Double.parseDouble(row.get("mass g"))).isBetween(1.0, 10.0);
    // A trough of some 3 g is some 3000 mm³; it stands no higher than it is long.
    assertThat(Double.parseDouble(row.get("volume mm3"))).isBetween(1000.0, 10000.0);
    assertThat(Double.parseDouble(row.get("height mm"))).isBetween(5.0, 100.0);
    assertThat(Double.parseDouble(row.get("support mm2"))).isNotNegative();
    assertThat(row.get("notes")).isEqualTo(record.notes());
  }

  @Test
  void aLabelThatIsNotWantedIsLeftOut() throws Exception {
    Path home = folder.resolve("out/inv-a");
    run(List.of(RunOption.NO_LABEL), InventedOrders.row("inv-a", 0));
    long plain = Files.size(home.resolve("trough.stl"));
    assertThat(MakingRecord.in(home).orElseThrow().labels()).isEmpty();
    assertThat(run(List.of(), InventedOrders.row("inv-a", 0)))
        .isEqualTo(Map.of(OrderState.MADE, 1L));
    assertThat(Files.size(home.resolve("trough.stl"))).isGreaterThan(plain);
    Files.writeString(
        folder.resolve("orders.csv"),
        InventedOrders.HEADER + ",print.label\n" + InventedOrders.row("inv-a", 0) + ",no\n");
    run(List.of());
    assertThat(MakingRecord.in(home).orElseThrow().labels()).isEmpty();
  }

  /** A label has room for its last letters only: the record tells which. */
  @Test
  void theRecordResolvesAShortenedLabel() throws Exception {
    String reference = "inv-" + "long-".repeat(7) + "9";
    run(List.of(), InventedOrders.row(reference, 0));
    Path home = folder.resolve("out").resolve(reference);
    String label = MakingRecord.in(home).orElseThrow().labels().get("trough");
    assertThat(reference).endsWith(label).isNotEqualTo(label);
    assertThat(report().get(0).get("label").strip()).isEqualTo(label);
  }

  @Test
  void filesAreNamedInFullWhereThatIsAskedFor() throws Exception {
    run(List.of(RunOption.FULL_NAMES, RunOption.NO_LABEL), InventedOrders.row("inv-a", 1));
    Path home = folder.resolve("out/inv-a");
    String end = "_r1_" + SharedData.build();
    String trough = "inv-a_left_ring_trough" + end + ".stl";
    assertThat(names(home))
        .containsExactlyInAnyOrder(
            trough, "inv-a_left_ring_orthosis" + end + ".3mf", "report.json", "record.json");
    assertThat(Files.readString(home.resolve("report.json"))).contains("\"" + trough + "\"");
    assertThat(FolderCheck.of(home).ok()).isTrue();
  }

  @Test
  void sheetsComeWhereTheyAreAskedFor() throws Exception {
    run(List.of(RunOption.SHEETS, RunOption.NO_LABEL), InventedOrders.row("inv-a", 0));
    Path home = folder.resolve("out/inv-a");
    assertThat(names(home))
        .contains(
            "bench-sheet.pdf", "pattern.pdf", "patient-page.pdf", "rigidity.svg", "record.pdf");
    assertThat(FolderCheck.of(home).ok()).isTrue();
  }

  /** Two faults of one order stand in one line. */
  @Test
  void aCellOfTheReportStaysOneLine() throws Exception {
    run(List.of(), InventedOrders.row("inv-a", 0).replace("ring", "thumb").replace("right", "up"));
    assertThat(report().get(0).get("text"))
        .contains("digit", "hand", "; ")
        .doesNotContain("\n", "\r");
  }

  private List<CSVRecord> report() throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser =
        CSVParser.parse(folder.resolve("out/batch-report.csv"), StandardCharsets.UTF_8, format)) {
      return parser.getRecords();
    }
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  /** Rows given are written; without any the table is taken as it is. */
  private Map<OrderState, Long> run(List<RunOption> options, String... rows) throws Exception {
    Path table = folder.resolve("orders.csv");
    if (rows.length > 0) {
      Files.writeString(table, InventedOrders.HEADER + "\n" + String.join("\n", rows) + "\n");
    }
    Path out = Files.createDirectories(folder.resolve("out"));
    EnumSet<RunOption> chosen = EnumSet.noneOf(RunOption.class);
    chosen.addAll(options);
    try (OrderSource source = OrderSources.open(table)) {
      BatchSettings settings = new BatchSettings(out, SolidFormat.USUAL, List.of(), 2);
      return Batch.run(source, settings.with(chosen), outcome -> {});
    }
  }
}
