package org.midlateral.recipe.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.LongRun;
import org.midlateral.document.FileProblem;
import org.midlateral.recipe.batch.Outcome.OrderState;
import org.midlateral.recipe.record.FolderCheck;
import org.midlateral.recipe.record.MakingRecord;

/** What a batch does when the machine fails it. */
@Timeout(value = 10, unit = TimeUnit.MINUTES)
class BatchFaultsTest {
  private static final int KILLS = LongRun.count(6, 40);

  /** Kills while the orders themselves change, which take twice as long each. */
  private static final int CHANGES = LongRun.count(3, 12);

  private static final int LINES = LongRun.count(12_000, 1_000_000);

  private static final int ORDERS = 24;

  @TempDir Path folder;

  @Test
  @Tag(LongRun.TAG)
  void killedAndRunAgainItLosesNothing() throws Exception {
    Path table = table(ORDERS);
    Path whole = Files.createDirectory(folder.resolve("whole"));
    long longest = millisecondsOfAWholeRun(table, whole);
    Path killed = Files.createDirectory(folder.resolve("killed"));
    Random random = new Random(11);
    int cut = 0;
    // some half of the orders is left to be made each time
    for (int i = 0; i < KILLS; i++) {
      boolean ended = ranToItsEnd(table, killed, moment(i, KILLS, longest / 2, random));
      cut += ended ? 0 : 1;
      everyFileIsWhole(killed);
      if (ended || random.nextInt(4) == 0) {
        forgetSome(killed, random);
      }
    }
    assertThat(cut).as("runs that were cut short").isPositive();
    Map<OrderState, Long> counts = run(table, killed);
    assertThat(counts.values().stream().mapToLong(n -> n).sum()).isEqualTo(ORDERS);
    assertThat(counts.keySet()).isSubsetOf(OrderState.MADE, OrderState.UNCHANGED);
    Map<String, byte[]> wanted = contents(whole);
    Map<String, byte[]> found = contents(killed);
    assertThat(found.keySet()).isEqualTo(wanted.keySet());
    wanted.forEach((name, bytes) -> assertThat(found.get(name)).as(name).isEqualTo(bytes));
  }

  /** Orders change, go and turn wrong from run to run, and most runs are cut short. */
  @Test
  @Tag(LongRun.TAG)
  void killedWhileOrdersChangeItLeavesNoObsoletePart() throws Exception {
    Path out = Files.createDirectory(folder.resolve("changing"));
    long longest = millisecondsOfAWholeRun(changed(0), out);
    Random random = new Random(5);
    int cut = 0;
    for (int i = 0; i < CHANGES; i++) {
      boolean ended = ranToItsEnd(changed(i + 1), out, moment(i, CHANGES, longest, random));
      cut += ended ? 0 : 1;
      everyFileIsWhole(out);
    }
    assertThat(cut).as("runs that were cut short").isPositive();
    Path last = changed(CHANGES + 1);
    run(last, out);
    Map<OrderState, Long> again = run(last, out);
    assertThat(again.keySet()).isSubsetOf(OrderState.UNCHANGED, OrderState.WRONG);
    List<String> rows = Files.readAllLines(last);
    int checked = 0;
    for (Path home : OrderHomes.in(out)) {
      FolderCheck check = FolderCheck.of(home);
      assertThat(check.ok()).as("%s", home).isTrue();
      MakingRecord record = check.record().orElseThrow();
      String row =
          rows.stream().filter(r -> r.startsWith(record.reference() + ",")).findFirst().get();
      boolean wrong = row.contains("thumb");
      assertThat(record.state()).isEqualTo(wrong ? "wrong" : "made");
      assertThat(record.files().isEmpty()).isEqualTo(wrong);
      checked++;
    }
    assertThat(checked).isGreaterThanOrEqualTo(ORDERS / 2);
    try (Stream<Path> walk = Files.walk(out.resolve("superseded"), 2)) {
      List<Path> former = walk.filter(p -> p.getFileName().toString().matches("\\d+")).toList();
      assertThat(former).as("makings of orders that changed").isNotEmpty();
      for (Path home : former) {
        assertThat(FolderCheck.of(home).ok()).as("%s", home).isTrue();
      }
    }
  }

  /** How long a run takes here and now that nothing cuts short, so that kills fall within one. */
  private long millisecondsOfAWholeRun(Path table, Path out) throws Exception {
    long start = System.nanoTime();
    assertThat(ranToItsEnd(table, out, TimeUnit.MINUTES.toMillis(5))).isTrue();
    return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
  }

  /** Whether a run of its own process ended before it was killed. */
  private boolean ranToItsEnd(Path table, Path out, long milliseconds) throws Exception {
    Path said = folder.resolve("said.txt");
    Process process = BatchProcess.start("300m", said.toFile(), table.toString(), out.toString());
    boolean ended = process.waitFor(milliseconds, TimeUnit.MILLISECONDS);
    process.destroyForcibly().waitFor();
    if (ended) {
      assertThat(process.exitValue()).as(Files.readString(said)).isZero();
    }
    return ended;
  }

  /** When to kill the i-th of so many runs: one in each equal share of the time, at random. */
  private static long moment(int i, int runs, long longest, Random random) {
    return Math.round(longest * (i + random.nextDouble()) / runs);
  }

  /**
   * Another table each time: a third of its orders changed, one in eight gone, one in nine wrong.
   */
  private Path changed(int turn) throws IOException {
    StringBuilder text = new StringBuilder(InventedOrders.HEADER).append('\n');
    for (int i = 0; i < ORDERS; i++) {
      String row = InventedOrders.row("inv-" + i, i + (i % 3 == turn % 3 ? turn : 0));
      if ((i + turn) % 8 != 0) {
        text.append((i + turn) % 9 == 0 ? row.replace("ring", "thumb") : row).append('\n');
      }
    }
    return Files.writeString(folder.resolve("orders.csv"), text);
  }

  @Test
  void aFullDiskStopsItAndAnotherRunGoesOn() throws Exception {
    Path disk = mount("size=4m");
    try {
      Path table = table(ORDERS);
      assertThatThrownBy(() -> run(table, disk))
          .isInstanceOfSatisfying(
              FileProblem.class,
              problem -> assertThat(problem.kind()).isEqualTo(FileProblem.Kind.FULL));
      everyFileIsWhole(disk);
      command("mount", "-o", "remount,size=60m", disk.toString());
      Map<OrderState, Long> counts = run(table, disk);
      assertThat(counts).containsKeys(OrderState.MADE, OrderState.UNCHANGED);
      assertThat(counts.get(OrderState.MADE) + counts.get(OrderState.UNCHANGED)).isEqualTo(ORDERS);
    } finally {
      command("umount", disk.toString());
    }
  }

  @Test
  void aReadOnlyFolderIsNamed() throws Exception {
    Path disk = mount("size=4m,ro");
    try {
      Path table = table(2);
      assertThatThrownBy(() -> run(table, disk))
          .isInstanceOf(FileProblem.class)
          .hasMessageContaining(disk.toString())
          .hasMessageContaining("read-only");
    } finally {
      command("umount", disk.toString());
    }
  }

  /** One line in a hundred broken, and the memory of a small device. */
  @Test
  @Tag(LongRun.TAG)
  @Timeout(value = 60, unit = TimeUnit.MINUTES)
  void aLongTableIsReadInBoundedMemory() throws Exception {
    Path table = folder.resolve("long.csv");
    int broken = 0;
    try (BufferedWriter out = Files.newBufferedWriter(table)) {
      out.write(InventedOrders.HEADER + "\n");
      for (int i = 0; i < LINES; i++) {
        String row = InventedOrders.row("inv-" + i, i);
        if (i % 100 == 7) {
          row = broken(row, broken++);
        }
        out.write(row + "\n");
      }
    }
    Path said = folder.resolve("said.txt");
    Process process = BatchProcess.start("96m", said.toFile(), table.toString());
    assertThat(process.waitFor()).as(Files.readString(said)).isZero();
    assertThat(Files.readString(said).strip())
        .isEqualTo("{MADE=" + (LINES - broken) + ", WRONG=" + broken + "}");
  }

  private static String broken(String row, int n) {
    return switch (n % 5) {
      case 0 -> row.replace("ring", "\"ring");
      case 1 -> row + ",1";
      case 2 -> row.replaceFirst("inv", "..");
      case 3 -> row.replace("ring", "\u0000");
      default -> row.substring(0, row.length() / 2);
    };
  }

  /** Every file under its own name is whole: sizes as recorded, STL files as long as they say. */
  private static void everyFileIsWhole(Path out) throws IOException {
    try (Stream<Path> files = Files.walk(out)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = file.getFileName().toString();
        if (name.startsWith(".")) {
          continue;
        }
        if (name.endsWith(".stl")) {
          ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file));
          int triangles = bytes.order(ByteOrder.LITTLE_ENDIAN).getInt(80);
          assertThat(bytes.capacity()).as("%s", file).isEqualTo(84 + 50 * triangles);
        } else if (name.equals(MakingRecord.FILE)) {
          assertThat(MakingRecord.in(file.getParent())).as("%s", file).isPresent();
        } else {
          assertThat(Files.readString(file)).as("%s", file).endsWith("\n");
        }
      }
    }
  }

  /** Takes some orders away, so that there is work left to be cut short. */
  private static void forgetSome(Path out, Random random) throws IOException {
    try (Stream<Path> files = Files.walk(out)) {
      for (Path file : files.filter(f -> f.endsWith(MakingRecord.FILE)).toList()) {
        if (random.nextBoolean()) {
          try (Stream<Path> all = Files.list(file.getParent())) {
            for (Path each : all.toList()) {
              Files.delete(each);
            }
          }
        }
      }
    }
  }

  private static Map<String, byte[]> contents(Path out) throws IOException {
    Map<String, byte[]> contents = new TreeMap<>();
    try (Stream<Path> files = Files.walk(out)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        if (!file.endsWith("batch-report.csv")) {
          contents.put(out.relativize(file).toString(), Files.readAllBytes(file));
        }
      }
    }
    return contents;
  }

  private Path table(int orders) throws IOException {
    StringBuilder text = new StringBuilder(InventedOrders.HEADER).append('\n');
    for (int i = 0; i < orders; i++) {
      text.append(InventedOrders.row("inv-" + i, i)).append('\n');
    }
    return Files.writeString(folder.resolve("orders.csv"), text);
  }

  private static Map<OrderState, Long> run(Path table, Path out) throws Exception {
    try (OrderSource source = OrderSources.open(table)) {
      return Batch.run(source, BatchProcess.settings(out), outcome -> {});
    }
  }

  /** A small disk of its own; it takes root to mount one, who must be able to in CI. */
  private Path mount(String options) throws Exception {
    boolean root = "root".equals(System.getProperty("user.name"));
    Path disk = Files.createDirectory(folder.resolve("disk"));
    int status =
        root ? status("mount", "-t", "tmpfs", "-o", options, "tmpfs", disk.toString()) : -1;
    if (System.getenv("CI") == null || !root) {
      assumeTrue(status == 0, "a small disk cannot be mounted: this fault is left out");
    }
    assertThat(status).as("mounting a small disk").isZero();
    return disk;
  }

  private static void command(String... words) throws Exception {
    assertThat(status(words)).as(String.join(" ", words)).isZero();
  }

  private static int status(String... words) throws Exception {
    Process process = new ProcessBuilder(words).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    int status = process.waitFor();
    if (status != 0) {
      System.err.print(said);
    }
    return status;
  }
}
