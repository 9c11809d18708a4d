package org.midlateral.recipe.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.document.SafeName;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.recipe.batch.BatchSettings.RunOption;
import org.midlateral.recipe.batch.Outcome.OrderState;

class BatchTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-01T08:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;
  private Path out;
  private Path table;
  private final List<Outcome> told = new ArrayList<>();

  @BeforeEach
  void folders() throws IOException {
    out = Files.createDirectory(folder.resolve("out"));
    table = folder.resolve("orders.csv");
  }

  @Test
  void everyOrderHasItsFolderAndTheReportKeepsTheirOrder() throws Exception {
    write(row("inv-a", 0), row("inv-b", 1), row("inv-c", 2));
    assertThat(run()).isEqualTo(Map.of(OrderState.MADE, 3L));
    assertThat(names(out))
        .containsExactly(".batch.lock", "batch-report.csv", "inv-a", "inv-b", "inv-c");
    assertThat(names(out.resolve("inv-b")))
        .containsExactly("orthosis.3mf", "record.json", "report.json", "trough.stl");
    assertThat(Files.readAllLines(out.resolve("batch-report.csv")))
        .hasSize(4)
        .element(2)
        .asString()
        .startsWith(table + ":3,inv-b,inv-b,made,,,1,,");
  }

  @Test
  void aSecondRunMakesOnlyWhatChanged() throws Exception {
    write(row("inv-a", 0), row("inv-b", 1), row("inv-c", 2));
    run();
    FileTime before = Files.getLastModifiedTime(out.resolve("inv-a/trough.stl"));
    byte[] bytes = Files.readAllBytes(out.resolve("inv-c/trough.stl"));
    write(row("inv-a", 0), row("inv-b", 5), row("inv-c", 2));
    Files.delete(out.resolve("inv-c/trough.stl"));
    assertThat(run()).isEqualTo(Map.of(OrderState.MADE, 2L, OrderState.UNCHANGED, 1L));
    assertThat(Files.getLastModifiedTime(out.resolve("inv-a/trough.stl"))).isEqualTo(before);
    assertThat(Files.readAllBytes(out.resolve("inv-c/trough.stl"))).isEqualTo(bytes);
  }

  @Test
  void otherFormatsOrOverridesMakeItAgain() throws Exception {
    write(row("inv-a", 0));
    run();
    assertThat(run(List.of("trough.wall=1.8"), SolidFormat.STL)).containsKey(OrderState.MADE);
    assertThat(run(List.of("trough.wall=1.8"), SolidFormat.STL)).containsKey(OrderState.UNCHANGED);
    assertThat(run(List.of("trough.wall=1.8"), SolidFormat.PLY)).containsKey(OrderState.MADE);
  }

  /** Else the parts of another finger would stand beside a refusal, or beside the new ones. */
  @Test
  void noPartOfAnEarlierMakingStays() throws Exception {
    write(row("inv-a", 0));
    run(List.of(), SolidFormat.STL, SolidFormat.PLY, SolidFormat.OBJ);
    Files.writeString(out.resolve("inv-a/trough.gcode"), "of the lab's own making");
    run(List.of("trough.wall=1.8"), SolidFormat.THREE_MF);
    assertThat(names(out.resolve("inv-a")))
        .containsExactly("orthosis.3mf", "record.json", "report.json");
    assertThat(out.resolve("superseded/inv-a/1/trough.gcode")).exists();
    run(List.of("trough.proximal-margin=10", "length.palmar-crease-to-web=12"), SolidFormat.STL);
    assertThat(told.get(2).state()).isEqualTo(OrderState.REFUSED);
    assertThat(names(out.resolve("inv-a"))).containsExactly("record.json", "report.json");
  }

  /** The first reference is what the third would be called beside the second. */
  @Test
  void noTwoOrdersShareAFolder() throws Exception {
    write(row(SafeName.apart("b-1"), 0), row("B-1", 1), row("b-1", 2));
    assertThat(run()).isEqualTo(Map.of(OrderState.MADE, 3L));
    assertThat(told.stream().map(o -> SafeName.folded(o.folder()))).doesNotHaveDuplicates();
  }

  /** Else the report would meet the order's folder, or the folder the report. */
  @Test
  void anOrderNamedLikeTheReportHasAFolderBesideIt() throws Exception {
    write(row("batch-report.csv", 0), row("BATCH-REPORT.CSV", 1));
    assertThat(run()).isEqualTo(Map.of(OrderState.MADE, 2L));
    assertThat(out.resolve("batch-report.csv")).isRegularFile();
    assertThat(told).allMatch(o -> Files.exists(out.resolve(o.folder()).resolve("trough.stl")));
  }

  @Test
  void aFileInPlaceOfAnOrdersFolderSpoilsThatOrderOnly() throws Exception {
    write(row("inv-a", 0), row("inv-b", 1), row("inv-c", 2));
    Files.writeString(out.resolve("inv-b"), "not ours");
    assertThat(run()).isEqualTo(Map.of(OrderState.MADE, 2L, OrderState.UNWRITTEN, 1L));
    assertThat(told.get(1).text()).contains("inv-b", "is no folder");
    assertThat(out.resolve("inv-b")).hasContent("not ours");
    Files.delete(out.resolve("inv-b"));
    assertThat(run()).isEqualTo(Map.of(OrderState.MADE, 1L, OrderState.UNCHANGED, 2L));
  }

  @Test
  void theReportNamesTheReferenceOfAWrongOrder() throws Exception {
    write(row("inv-a", 0).replace("ring", "thumb"), row("=1+1", 1));
    run();
    List<String> lines = Files.readAllLines(out.resolve("batch-report.csv"));
    assertThat(lines.get(1)).startsWith(table + ":2,inv-a,,wrong,");
    assertThat(lines.get(2)).contains("\" =1+1\"");
  }

  /** It would tell of orders that are being made anew. */
  @Test
  void aRunThatIsCutShortLeavesNoFormerReport() throws Exception {
    write(row("inv-a", 0));
    run();
    assertThat(out.resolve("batch-report.csv")).exists();
    write(row("inv-a", 1));
    try (OrderSource source = OrderSources.open(table)) {
      BatchSettings settings = new BatchSettings(out, List.of(SolidFormat.STL), List.of(), 2);
      assertThatThrownBy(
              () ->
                  Batch.run(
                      source,
                      settings,
                      outcome -> {
                        throw new IllegalStateException("cut short");
                      }))
          .hasMessage("cut short");
    }
    assertThat(out.resolve("batch-report.csv")).doesNotExist();
  }

  @Test
  void theReportNamesTheFilesAndKeepsTheNote() throws Exception {
    write(row("inv-a", 0));
    run(List.of("note=second try"), SolidFormat.PLY, SolidFormat.THREE_MF);
    String report = Files.readString(out.resolve("inv-a/report.json"));
    assertThat(report).contains("\"trough.ply\"").doesNotContain(".stl");
    assertThat(report).contains("\"note\" : \"second try\"");
    run(List.of(), SolidFormat.OBJ);
    assertThat(Files.readString(out.resolve("inv-a/report.json"))).contains("\"orthosis.obj\"");
  }

  @Test
  void badOrdersAreToldAndTheRestIsMade() throws Exception {
    write(
        row("inv-a", 0),
        row("inv-b", 1).replace("ring", "thumb"),
        row("inv-a", 2),
        row("INV-A", 3),
        row("con", 4));
    Map<OrderState, Long> counts = run();
    assertThat(counts)
        .isEqualTo(Map.of(OrderState.MADE, 3L, OrderState.WRONG, 1L, OrderState.DUPLICATE, 1L));
    assertThat(told.get(1).text()).contains("digit").contains("thumb");
    assertThat(told.get(2).text()).contains("inv-a").contains("earlier order");
    assertThat(told.stream().map(o -> SafeName.folded(o.folder())).filter(f -> !f.isEmpty()))
        .doesNotHaveDuplicates();
    assertThat(told.get(4).folder()).startsWith("_con-");
  }

  @Test
  void refusedDesignsAreRememberedAndHaveNoParts() throws Exception {
    write(row("inv-a", 0));
    List<String> folds =
        List.of(
            "length.palmar-crease-to-web=12",
            "trough.proximal-margin=10",
            "trough.web-clearance=1");
    assertThat(run(folds, SolidFormat.STL)).isEqualTo(Map.of(OrderState.REFUSED, 1L));
    assertThat(names(out.resolve("inv-a"))).containsExactly("record.json", "report.json");
    String text = told.get(0).text();
    assertThat(run(folds, SolidFormat.STL)).isEqualTo(Map.of(OrderState.REFUSED, 1L));
    assertThat(told.get(1).text()).isEqualTo(text).isNotBlank();
  }

  /** Its trough does not wait for a shell that cannot be made, nor is it told as a whole. */
  @Test
  void anOrderWithoutItsShellIsMadeInPart() throws Exception {
    write(row("inv-a", 0));
    run(List.of("dorsal-shell.make=yes"), SolidFormat.STL);
    assertThat(names(out.resolve("inv-a"))).contains("dorsal-shell.stl");
    List<String> tooLong = List.of("dorsal-shell.make=yes", "dorsal-shell.length=90");
    assertThat(run(tooLong, SolidFormat.STL)).isEqualTo(Map.of(OrderState.PARTLY, 1L));
    assertThat(names(out.resolve("inv-a")))
        .containsExactly("record.json", "report.json", "trough.stl");
    String text = told.get(1).text();
    assertThat(text).startsWith("The dorsal shell is missing").contains("Tried, and works: ");
    assertThat(Files.readString(out.resolve("batch-report.csv"))).contains(",partly,");
    assertThat(run(tooLong, SolidFormat.STL)).isEqualTo(Map.of(OrderState.PARTLY, 1L));
    assertThat(told.get(2).text()).isEqualTo(text);
  }

  @Test
  void aFolderOfFilesIsASourceToo() throws Exception {
    Path files = Files.createDirectory(folder.resolve("files"));
    for (String name : List.of("bulbous-ring.yaml", "slim-little.yaml")) {
      String other = name.replace("slim-little.yaml", "SLIM.YAML");
      Files.copy(Path.of("../samples").resolve(name), files.resolve(other));
    }
    Files.writeString(files.resolve("broken.yml"), "reference: [");
    table = files;
    Map<OrderState, Long> counts =
        run(List.of("dorsal-shell.make=no", "print.edge-length=1.2"), SolidFormat.STL);
    assertThat(counts).isEqualTo(Map.of(OrderState.MADE, 2L, OrderState.WRONG, 1L));
  }

  @Test
  void aSecondBatchInTheSameFolderIsRefused() throws Exception {
    write(row("inv-a", 0));
    try (FolderLock lock = FolderLock.take(out)) {
      assertThat(lock.folder()).isEqualTo(out);
      assertThatThrownBy(this::run)
          .isInstanceOf(FolderInUse.class)
          .hasMessageContaining(out.toString());
    }
    assertThat(run()).containsKey(OrderState.MADE);
  }

  @Test
  void sameInputSameBytes() throws Exception {
    write(IntStream.range(0, 6).mapToObj(i -> row("inv-" + i, i)).toArray(String[]::new));
    run();
    Map<Path, byte[]> first = contents();
    deleteAll(out);
    run();
    Map<Path, byte[]> second = contents();
    assertThat(second.keySet()).isEqualTo(first.keySet());
    second.forEach((path, bytes) -> assertThat(bytes).as("%s", path).isEqualTo(first.get(path)));
  }

  private Map<Path, byte[]> contents() throws IOException {
    Map<Path, byte[]> contents = new java.util.TreeMap<>();
    try (Stream<Path> files = Files.walk(out)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        contents.put(out.relativize(file), Files.readAllBytes(file));
      }
    }
    return contents;
  }

  private static void deleteAll(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
        if (!file.equals(folder)) {
          Files.delete(file);
        }
      }
    }
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private void write(String... rows) throws IOException {
    Files.writeString(table, InventedOrders.HEADER + "\n" + String.join("\n", rows) + "\n");
  }

  private static String row(String reference, int n) {
    return InventedOrders.row(reference, n);
  }

  private Map<OrderState, Long> run() throws Exception {
    return run(List.of(), SolidFormat.STL, SolidFormat.THREE_MF);
  }

  private Map<OrderState, Long> run(List<String> overrides, SolidFormat... formats)
      throws Exception {
    try (OrderSource source = OrderSources.open(table)) {
      BatchSettings settings = new BatchSettings(out, List.of(formats), overrides, 2);
      return Batch.run(source, settings.with(CLOCK).with(Set.of(RunOption.NO_LABEL)), told::add);
    }
  }
}
