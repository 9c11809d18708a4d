package org.midlateral.recipe.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.recipe.batch.BatchSettings.RunOption;
import org.midlateral.recipe.batch.Outcome.OrderState;
import org.midlateral.recipe.record.FolderCheck;
import org.midlateral.recipe.record.FolderCheck.FileState;
import org.midlateral.recipe.record.MakingRecord;

/** After a run each folder holds what the source says now, or nothing but a record of why. */
class SupersededTest {
  @TempDir Path folder;
  private Path out;
  private Path table;
  private final List<Outcome> told = new ArrayList<>();

  @BeforeEach
  void twoOrders() throws Exception {
    out = Files.createDirectory(folder.resolve("out"));
    table = folder.resolve("orders.csv");
    write(row("inv-a", 0), row("inv-b", 1));
    run();
    told.clear();
  }

  @Test
  void anOrderThatIsWrongNowLeavesNothingButWhy() throws Exception {
    byte[] trough = Files.readAllBytes(out.resolve("inv-a/trough.stl"));
    write(row("inv-a", 0).replace("ring", "thumb"), row("inv-b", 1));
    assertThat(run())
        .isEqualTo(
            Map.of(OrderState.WRONG, 1L, OrderState.UNCHANGED, 1L, OrderState.SUPERSEDED, 1L));
    assertThat(names(out.resolve("inv-a"))).containsExactly("record.json");
    MakingRecord why = MakingRecord.in(out.resolve("inv-a")).orElseThrow();
    assertThat(why.state()).isEqualTo("wrong");
    assertThat(why.text()).contains("digit", "thumb");
    assertThat(why.former()).isEqualTo("superseded/inv-a/1");
    assertThat(out.resolve("superseded/inv-a/1/trough.stl")).hasBinaryContent(trough);
    assertThat(FolderCheck.of(out.resolve("superseded/inv-a/1")).ok()).isTrue();
    assertThat(Files.readAllLines(out.resolve("batch-report.csv")).get(3))
        .contains("inv-a,inv-a,superseded,", ":2 tells why", ",superseded/inv-a/1");

    // Told once: the next run finds nothing to move.
    assertThat(run()).isEqualTo(Map.of(OrderState.WRONG, 1L, OrderState.UNCHANGED, 1L));
    write(row("inv-a", 4), row("inv-b", 1));
    assertThat(run()).isEqualTo(Map.of(OrderState.MADE, 1L, OrderState.UNCHANGED, 1L));
    MakingRecord again = MakingRecord.in(out.resolve("inv-a")).orElseThrow();
    assertThat(again.revision()).isEqualTo(2);
    assertThat(again.former()).isEqualTo("superseded/inv-a/1");
  }

  @Test
  void aRowThatIsGoneLeavesNoFolder() throws Exception {
    write(row("inv-b", 1));
    assertThat(run(RunOption.KEEP_OTHERS)).isEqualTo(Map.of(OrderState.UNCHANGED, 1L));
    assertThat(out.resolve("inv-a/trough.stl")).exists();
    assertThat(run()).isEqualTo(Map.of(OrderState.UNCHANGED, 1L, OrderState.SUPERSEDED, 1L));
    assertThat(out.resolve("inv-a")).doesNotExist();
    assertThat(out.resolve("superseded/inv-a/1/trough.stl")).exists();
    assertThat(told.get(2).former()).isEqualTo("superseded/inv-a/1");
    assertThat(run()).isEqualTo(Map.of(OrderState.UNCHANGED, 1L));
  }

  /** What a slicer made of the former part goes with it. */
  @Test
  void aChangedOrderIsANewRevision() throws Exception {
    Files.writeString(out.resolve("inv-a/trough.gcode"), "of the laboratory's own making");
    write(row("inv-a", 5), row("inv-b", 1));
    run();
    assertThat(names(out.resolve("inv-a")))
        .containsExactly("record.json", "report.json", "trough.stl");
    assertThat(out.resolve("superseded/inv-a/1/trough.gcode")).exists();
    assertThat(told.get(0).former()).isEqualTo("superseded/inv-a/1");
    MakingRecord record = MakingRecord.in(out.resolve("inv-a")).orElseThrow();
    assertThat(record.revision()).isEqualTo(2);
    assertThat(record.settings()).containsEntry("circumference.pip", "59");
    assertThat(record.source().stated()).contains("circumference.pip=59.0");
    assertThat(record.source().place()).isEqualTo("orders.csv:2");
  }

  @Test
  void deletedPartsLeaveTheirRecordAndWhatIsTheUsersOwn() throws Exception {
    Files.writeString(out.resolve("inv-a/trough.gcode"), "of the laboratory's own making");
    write(row("inv-a", 5));
    run(RunOption.DELETE_SUPERSEDED);
    assertThat(names(out.resolve("superseded/inv-a/1")))
        .containsExactly("record.json", "trough.gcode");
    assertThat(names(out.resolve("superseded/inv-b/1"))).containsExactly("record.json");
    assertThat(MakingRecord.in(out.resolve("inv-a")).orElseThrow().revision()).isEqualTo(2);
  }

  @Test
  void aFileThatIsWrongNowIsKnownByItsName() throws Exception {
    Path files = Files.createDirectory(folder.resolve("files"));
    table = files;
    Path file = files.resolve("one.yaml");
    Files.writeString(
        file,
        Files.readString(Path.of("../samples/slim-little.yaml")) + "print: {edge-length: 1.2}\n");
    run(RunOption.KEEP_OTHERS);
    assertThat(out.resolve("demo-little-slim/trough.stl")).exists();
    Files.writeString(file, "reference: [");
    run(RunOption.KEEP_OTHERS);
    assertThat(names(out.resolve("demo-little-slim"))).containsExactly("record.json");
    assertThat(MakingRecord.in(out.resolve("demo-little-slim")).orElseThrow().state())
        .isEqualTo("wrong");
  }

  /** Killed after the former making was moved, before the new one came in its place. */
  @Test
  void aRunCutShortBetweenTheMovesLosesNothing() throws Exception {
    write(row("inv-a", 5), row("inv-b", 1));
    Path aside = Files.createDirectory(out.resolve(".making-inv-a"));
    Files.writeString(aside.resolve("trough.stl"), "half");
    Files.createDirectories(out.resolve("superseded/inv-a"));
    Files.move(out.resolve("inv-a"), out.resolve("superseded/inv-a/1"));
    assertThat(run()).isEqualTo(Map.of(OrderState.MADE, 1L, OrderState.UNCHANGED, 1L));
    assertThat(aside).doesNotExist();
    assertThat(MakingRecord.in(out.resolve("inv-a")).orElseThrow().revision()).isEqualTo(2);
    assertThat(FolderCheck.of(out.resolve("inv-a")).ok()).isTrue();
    assertThat(FolderCheck.of(out.resolve("superseded/inv-a/1")).ok()).isTrue();
  }

  @Test
  void aTableEditedMeanwhileMovesNothing() throws Exception {
    write(row("inv-b", 1));
    try (OrderSource source = OrderSources.open(table)) {
      BatchSettings settings =
          new BatchSettings(out, List.of(SolidFormat.STL), List.of(), 2)
              .with(EnumSet.of(RunOption.NO_LABEL));
      assertThatThrownBy(
              () ->
                  Batch.run(
                      source,
                      settings,
                      outcome -> {
                        try {
                          write(row("inv-a", 0), row("inv-b", 1));
                        } catch (IOException e) {
                          throw new IllegalStateException(e);
                        }
                      }))
          .isInstanceOf(SourceProblem.class)
          .hasMessageContaining("was changed while it was read");
    }
    assertThat(out.resolve("inv-a/trough.stl")).exists();
  }

  /**
   * A byte changed later is seen by the date; one with an older date, as by a clock set back, not.
   */
  @Test
  void whatWasChangedIsMadeAgain() throws Exception {
    Path trough = out.resolve("inv-a/trough.stl");
    byte[] bytes = Files.readAllBytes(trough);
    byte[] flipped = bytes.clone();
    flipped[1000] ^= 1;
    FileTime before = Files.getLastModifiedTime(trough);
    Files.write(trough, flipped);
    Files.setLastModifiedTime(trough, before);
    assertThat(run()).isEqualTo(Map.of(OrderState.UNCHANGED, 2L));
    assertThat(FolderCheck.of(out.resolve("inv-a")).files())
        .containsEntry("trough.stl", FileState.CHANGED);
    assertThat(run(RunOption.THOROUGH))
        .isEqualTo(Map.of(OrderState.MADE, 1L, OrderState.UNCHANGED, 1L));
    assertThat(trough).hasBinaryContent(bytes);
    Files.write(trough, flipped);
    Files.setLastModifiedTime(trough, FileTime.fromMillis(before.toMillis() + 3_600_000));
    assertThat(run()).isEqualTo(Map.of(OrderState.MADE, 1L, OrderState.UNCHANGED, 1L));
    assertThat(trough).hasBinaryContent(bytes);
    assertThat(MakingRecord.in(out.resolve("inv-a")).orElseThrow().revision()).isEqualTo(1);
    assertThat(out.resolve("superseded")).doesNotExist();
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

  private Map<OrderState, Long> run(RunOption... options) throws Exception {
    EnumSet<RunOption> chosen = EnumSet.noneOf(RunOption.class);
    chosen.addAll(List.of(options));
    chosen.add(RunOption.NO_LABEL);
    try (OrderSource source = OrderSources.open(table)) {
      BatchSettings settings = new BatchSettings(out, List.of(SolidFormat.STL), List.of(), 2);
      return Batch.run(source, settings.with(chosen), told::add);
    }
  }
}
