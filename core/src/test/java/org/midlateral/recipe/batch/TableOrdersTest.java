package org.midlateral.recipe.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.LongRun;
import org.midlateral.measurement.file.Orders;

class TableOrdersTest {
  private static final int HOSTILE = LongRun.count(500, 2000);

  @TempDir Path folder;

  @Test
  void rowsAreOrdersWithTheirLines() throws Exception {
    List<Orders.Result> read =
        read(InventedOrders.HEADER + "\r\n" + row(0) + "\r\n\r\n" + row(1) + "\r\n");
    assertThat(read).hasSize(2).allMatch(Orders.Result::ok);
    assertThat(read.get(1).order().measurements().reference()).isEqualTo("inv-1");
    assertThat(read.get(1).order().measurements().palmarCreaseToWeb()).isEqualTo(21);
    assertThat(read.get(1).order().design().dorsalShell().make()).isFalse();
  }

  /** RFC 4180, section 2: quoted cells, doubled quotes, line ends in a cell, none at the end. */
  @Test
  void quotedCells() throws Exception {
    String quoted = row(0).replace("inv-0", "\"inv-0\"").replace("ring", "\"ring\"");
    String open = row(1).replace("ring", "\"ri\nng\"");
    List<Orders.Result> read =
        read("\uFEFF" + InventedOrders.HEADER + "\n" + quoted + "\n" + open + "\n" + row(2));
    assertThat(read).hasSize(3);
    assertThat(read.get(0).ok()).isTrue();
    assertThat(read.get(1).errors().get(0).key()).isEqualTo("digit");
    assertThat(read.get(1).errors().get(0).line()).isEqualTo(3);
    assertThat(read.get(2).ok()).isTrue();
  }

  /** An inch sign at a value's end opens no cell: both rows are told, and the one between read. */
  @Test
  void aStrayQuoteSpoilsItsOwnRowOnly() throws Exception {
    String stray = row(0).replace("ring", "ring\"");
    List<Orders.Result> read =
        read(String.join("\n", InventedOrders.HEADER, stray, row(1), stray, row(2)));
    assertThat(read).extracting(Orders.Result::ok).containsExactly(false, true, false, true);
  }

  @Test
  void oneBadRowNeverStopsTheRest() throws Exception {
    String text =
        String.join(
            "\n",
            InventedOrders.HEADER,
            row(0),
            "a,b,c",
            row(1).replace("ring", "\"ring"),
            row(2),
            row(3).replace("ring", "ri\u0000ng"),
            row(4).replace("ring", "\"ri\"ng"),
            "x".repeat(100_000),
            row(5));
    List<Orders.Result> read = read(text);
    assertThat(read).hasSize(8);
    assertThat(read.stream().map(Orders.Result::ok))
        .containsExactly(true, false, false, true, false, false, false, true);
    assertThat(read.get(2).errors().get(0).line()).isEqualTo(4);
    assertThat(read.get(6).errors().get(0).line()).isEqualTo(8);
  }

  @Test
  void theSampleTableIsInOrder() throws Exception {
    Path sample = Path.of("..", "samples", "orders.csv");
    int orders = 0;
    try (OrderSource source = OrderSources.open(sample)) {
      for (Optional<RawOrder> raw = source.next(); raw.isPresent(); raw = source.next()) {
        Orders.Result read = raw.get().read().apply(List.of());
        assertThat(read.errors()).isEmpty();
        assertThat(read.cautions()).isEmpty();
        orders++;
      }
    }
    assertThat(orders).isEqualTo(5);
  }

  /** As spreadsheets leave them below the last order. */
  @Test
  void rowsOfCommasAloneArePassedOver() throws Exception {
    String commas = ",".repeat(12);
    List<Orders.Result> read =
        read(String.join("\n", InventedOrders.HEADER, row(0), commas, row(1), commas, " , ,"));
    assertThat(read).hasSize(2).allMatch(Orders.Result::ok);
    assertThat(read.get(1).order().measurements().reference()).isEqualTo("inv-1");
  }

  /** 0xFC is "ü" on many older systems; in a note no check of values would catch it. */
  @Test
  void aRowThatIsNotUtf8IsToldWithItsReference() throws Exception {
    Path file = folder.resolve("orders.csv");
    String text = InventedOrders.HEADER + ",note\n" + row(0) + ",f\u00FCr links\n" + row(1) + ",\n";
    Files.write(file, text.getBytes(StandardCharsets.ISO_8859_1));
    try (OrderSource source = OrderSources.open(file)) {
      RawOrder first = source.next().orElseThrow();
      assertThat(first.reference()).isEqualTo("inv-0");
      assertThat(first.read().apply(List.of()).errors().get(0).message())
          .contains("orders.csv:2", "UTF-8");
      assertThat(source.next().orElseThrow().read().apply(List.of()).ok()).isTrue();
    }
  }

  @Test
  void aColumnThatIsNoKeyIsToldWhatItIs() throws IOException {
    Path file = folder.resolve("orders.csv");
    Files.writeString(file, InventedOrders.HEADER + ",trough\n");
    assertThatThrownBy(() -> OrderSources.open(file))
        .hasMessageEndingWith(
            ":1: the column \"trough\" is a section; allowed: a key in it, as trough.wrap");
    Files.writeString(file, InventedOrders.HEADER + ",trough.wal\n");
    assertThatThrownBy(() -> OrderSources.open(file))
        .hasMessageEndingWith("\"trough.wal\" is not a key; did you mean trough.wall?");
    Files.writeString(file, InventedOrders.HEADER + ",relief.bubbles[0].height\n");
    assertThatThrownBy(() -> OrderSources.open(file))
        .hasMessageContaining("allowed: the whole list, relief.bubbles");
    Files.writeString(file, InventedOrders.HEADER + ",digit\n");
    assertThatThrownBy(() -> OrderSources.open(file)).hasMessageContaining("names two columns");
  }

  @Test
  void aTableThatASpreadsheetWroteInAnotherWayIsRefusedInWords() throws IOException {
    Path file = folder.resolve("orders.csv");
    Files.writeString(file, InventedOrders.HEADER.replace(',', '\t') + "\n");
    assertThatThrownBy(() -> OrderSources.open(file)).hasMessageContaining("tabs");
    for (Charset other : List.of(StandardCharsets.UTF_16, StandardCharsets.UTF_16LE)) {
      Files.writeString(file, InventedOrders.HEADER + "\n", other);
      assertThatThrownBy(() -> OrderSources.open(file))
          .as("%s", other)
          .isInstanceOf(SourceProblem.class)
          .hasMessageContaining("not UTF-8");
    }
  }

  /** As spreadsheets write them where a comma is the decimal mark. */
  @ParameterizedTest
  @ValueSource(strings = {"", "sep=;\n", "SEP=;;;\n", "\uFEFFsep=;\r\n"})
  void semicolonsPartCellsWithDecimalCommas(String lead) throws Exception {
    String header = " Reference ;HAND;" + InventedOrders.HEADER.substring(15).replace(',', ';');
    String text =
        lead + header + ";note;;\n" + comma(row(0)) + ";one, two;;\n" + comma(row(1)) + ";;\n";
    List<Orders.Result> read = read(text);
    assertThat(read).hasSize(2).allMatch(Orders.Result::ok);
    assertThat(read.get(0).order())
        .isEqualTo(
            read(InventedOrders.HEADER + ",note\n" + row(0) + ",\"one, two\"\n").get(0).order());
    assertThat(read.get(1).order().note()).isEmpty();
  }

  /** Where a number may mean two things, or a cell stands nowhere, it is refused as ever. */
  @Test
  void whatIsInDoubtIsRefused() throws Exception {
    String header = InventedOrders.HEADER.replace(',', ';');
    String[] rows = {
      comma(row(0)).replace(";54,0;", ";5.400,0;"),
      comma(row(1)) + ";9",
      comma(row(2)).substring(0, 30)
    };
    assertThat(read(header + "\n" + String.join("\n", rows) + "\n"))
        .hasSize(3)
        .noneMatch(Orders.Result::ok);
    assertThat(read(InventedOrders.HEADER + "\n" + row(0).replace(",54.0,", ",\"54,0\",") + "\n"))
        .noneMatch(Orders.Result::ok);
    List<Orders.Result> nameless = read(InventedOrders.HEADER + ",\n" + row(0) + ",5\n");
    assertThat(nameless.get(0).errors().get(0).message()).contains("5 is in a column without");
    Path file = folder.resolve("orders.csv");
    Files.writeString(file, "sep=|\n" + InventedOrders.HEADER + "\n" + row(0) + "\n");
    assertThatThrownBy(() -> OrderSources.open(file)).hasMessageContaining("allowed: , or ;");
  }

  @Test
  void columnsAreMappedAndIgnoredByName() throws Exception {
    Path file = folder.resolve("orders.csv");
    String header = InventedOrders.HEADER.replace(",digit,", ",Finger,");
    Files.writeString(file, header + ",Ward\n" + row(0) + ",7 east\n");
    assertThatThrownBy(() -> OrderSources.open(file))
        .hasMessageContaining("\"Finger\" is not a key");
    ColumnNames names = ColumnNames.of(List.of("finger=digit"), List.of(" ward"));
    try (OrderSource source = OrderSources.open(file, names)) {
      RawOrder raw = source.next().orElseThrow();
      assertThat(raw.read().apply(List.of()).ok()).isTrue();
      assertThat(raw.stated()).contains("digit=ring").noneMatch(s -> s.contains("east"));
    }
    ColumnNames other = ColumnNames.of(List.of("Finger=digit"), List.of("Ward", "Bed"));
    assertThatThrownBy(() -> OrderSources.open(file, other))
        .hasMessageContaining("there is no column \"bed\"");
    assertThatThrownBy(() -> ColumnNames.of(List.of("Finger=dgit"), List.of()))
        .hasMessageContaining("dgit is not a key", "digit");
    assertThatThrownBy(() -> ColumnNames.of(List.of("Finger"), List.of()))
        .hasMessageContaining("is not COLUMN=KEY");
    assertThatThrownBy(() -> OrderSources.open(folder, names)).hasMessageContaining("is a folder");
  }

  @Test
  void aTableOfAHeaderAloneSaysSo() throws IOException {
    Path file = folder.resolve("orders.csv");
    Files.writeString(file, InventedOrders.HEADER + "\n,,,\n\n");
    assertThatThrownBy(() -> OrderSources.open(file))
        .isInstanceOf(SourceProblem.class)
        .hasMessageContaining("holds no order");
  }

  @Test
  void foldersInAFolderAreTold() throws Exception {
    Files.copy(Path.of("../samples/slim-little.yaml"), folder.resolve("a.yaml"));
    Path inner = Files.createDirectory(folder.resolve("later"));
    Files.copy(Path.of("../samples/slim-little.yaml"), inner.resolve("b.yaml"));
    Path out = Files.createDirectories(folder.resolve("out/inv-a"));
    Files.writeString(out.resolve("report.json"), "{}");
    try (OrderSource source = OrderSources.open(folder)) {
      assertThat(source.notes())
          .containsExactly(inner + ": a folder of its own, whose orders are not read: 1");
    }
  }

  /** It waits for what was not seen, and until that rests. */
  @Test
  @Timeout(60)
  void aWatchEndsWhenSomethingCameAndRests() throws Exception {
    SourceWatch watch = new SourceWatch(folder);
    Files.writeString(folder.resolve("a.yaml"), "1");
    watch.look();
    CompletableFuture<Void> came =
        CompletableFuture.runAsync(
            () -> {
              try {
                watch.await(20);
              } catch (InterruptedException e) {
                throw new IllegalStateException(e);
              }
            });
    Thread.sleep(200);
    assertThat(came).isNotDone();
    Files.writeString(folder.resolve("b.yaml"), "2");
    came.get();
  }

  private static String comma(String row) {
    return row.replace(',', ';').replace('.', ',');
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "reference,hnad", "hand,hand", "\"", "a[0]"})
  void aTableWithoutKeysIsRefused(String header) throws IOException {
    Path file = folder.resolve("orders.csv");
    Files.writeString(file, header.isEmpty() ? "" : header + "\n" + row(0) + "\n");
    assertThatThrownBy(() -> OrderSources.open(file))
        .isInstanceOf(SourceProblem.class)
        .hasMessageContaining("orders.csv");
  }

  /** Bytes changed, cut out and put in at random: a result for every row, and no other end. */
  @Test
  @Tag(LongRun.TAG)
  void hostileTablesComeToAnEnd() throws IOException {
    byte[] plain =
        (InventedOrders.HEADER + "\n" + row(0) + "\n" + row(1) + "\n" + row(2) + "\n")
            .getBytes(StandardCharsets.UTF_8);
    Random random = new Random(7);
    Path file = folder.resolve("hostile.csv");
    int refused = 0;
    int good = 0;
    for (int i = 0; i < HOSTILE; i++) {
      Files.write(file, changed(plain, random));
      try (OrderSource source = OrderSources.open(file)) {
        for (Optional<RawOrder> raw = source.next(); raw.isPresent(); raw = source.next()) {
          Orders.Result result = raw.get().read().apply(List.of());
          assertThat(result.ok()).isEqualTo(result.errors().isEmpty());
          good += result.ok() ? 1 : 0;
        }
      } catch (SourceProblem e) {
        refused++;
      }
    }
    assertThat(refused).isBetween(HOSTILE / 100, HOSTILE);
    assertThat(good).isPositive();
  }

  private static byte[] changed(byte[] plain, Random random) {
    byte[] bytes = plain.clone();
    String special = "\",\n\r\u0000=;'\\\t";
    for (int n = random.nextInt(4); n >= 0; n--) {
      int at = random.nextInt(bytes.length);
      switch (random.nextInt(4)) {
        case 0 -> bytes[at] = (byte) random.nextInt(256);
        case 1 -> bytes[at] = (byte) special.charAt(random.nextInt(special.length()));
        case 2 -> bytes = java.util.Arrays.copyOf(bytes, Math.max(1, at));
        default -> {
          int from = random.nextInt(bytes.length);
          int size = Math.min(bytes.length - Math.max(at, from), random.nextInt(200));
          System.arraycopy(bytes, from, bytes, at, size);
        }
      }
    }
    return bytes;
  }

  private static String row(int n) {
    return InventedOrders.row("inv-" + n, n);
  }

  private List<Orders.Result> read(String text) throws Exception {
    Path file = folder.resolve("orders.csv");
    Files.writeString(file, text);
    List<Orders.Result> read = new ArrayList<>();
    try (OrderSource source = OrderSources.open(file)) {
      for (Optional<RawOrder> raw = source.next(); raw.isPresent(); raw = source.next()) {
        read.add(raw.get().read().apply(List.of()));
      }
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    return read;
  }
}
