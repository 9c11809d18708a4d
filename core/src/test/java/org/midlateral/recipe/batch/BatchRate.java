package org.midlateral.recipe.batch;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.recipe.batch.BatchSettings.RunOption;
import org.midlateral.recipe.batch.Outcome.OrderState;

/**
 * How many orders a machine makes in an hour: a batch of invented fingers, both pieces, STL, 3MF
 * and report, at the usual edge length.
 *
 * <pre>
 * mvn -q -pl core -am test-compile -Pbench \
 *     -Dbench.class=org.midlateral.recipe.batch.BatchRate -Dbench=2000
 * </pre>
 *
 * <p>Arguments: how many orders, a folder to write into (about 4 MB an order; a temporary one, left
 * to be looked at), threads (as many as there are cores), orders between two lines (250), an option
 * as {@code NO_LABEL}. Each line says what the orders since the last one took: wall time, processor
 * time of the whole process, and the memory it holds.
 */
public final class BatchRate {
  private final int each;
  private final Map<OrderState, Integer> counts = new EnumMap<>(OrderState.class);
  private int orders;
  private long wall = System.nanoTime();
  private long processor = processor();

  private BatchRate(int each) {
    this.each = each;
  }

  public static void main(String[] arguments) throws Exception {
    int orders = Integer.parseInt(arguments[0]);
    Path folder =
        arguments.length > 1
            ? Files.createDirectories(Path.of(arguments[1]))
            : Files.createTempDirectory("batch");
    System.out.println("into " + folder);
    int cores = Runtime.getRuntime().availableProcessors();
    int threads = arguments.length > 2 ? Integer.parseInt(arguments[2]) : cores;
    int each = arguments.length > 3 ? Integer.parseInt(arguments[3]) : 250;
    Path table = folder.resolve("orders.csv");
    Files.writeString(table, table(orders, 1));
    BatchSettings settings =
        new BatchSettings(
                Files.createDirectories(folder.resolve("made")),
                SolidFormat.USUAL,
                List.of(),
                threads)
            .with(arguments.length > 4 ? Set.of(RunOption.valueOf(arguments[4])) : Set.of());
    BatchRate rate = new BatchRate(each);
    try (OrderSource source = OrderSources.open(table)) {
      Batch.run(source, settings, rate::count);
    }
    System.out.println(rate.counts);
  }

  private void count(Outcome outcome) {
    counts.merge(outcome.state(), 1, Integer::sum);
    orders++;
    if (orders % each == 0) {
      long now = System.nanoTime();
      long used = processor();
      System.out.printf(
          Locale.ROOT,
          "%6d orders: %5.1f a second, %5.1f ms of processor each, %s%n",
          orders,
          each * 1e9 / (now - wall),
          (used - processor) / 1e6 / each,
          memory());
      wall = now;
      processor = used;
    }
  }

  /** A table of invented fingers. */
  static String table(int orders, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    StringBuilder text =
        new StringBuilder(
            "reference,hand,digit,circumference.proximal-phalanx,circumference.pip,"
                + "circumference.middle-phalanx,circumference.tip,length.palmar-crease-to-web,"
                + "length.web-to-pip,length.pip-to-dip,length.dip-to-tip,"
                + "angle.pip-extension-deficit\n");
    List<String> digits = List.of("index", "middle", "ring", "little");
    for (int i = 0; i < orders; i++) {
      int digit = random.nextInt(4);
      double pip = random.nextDouble(54, 70) - (digit == 3 ? 6 : 0);
      double middle = pip * random.nextDouble(0.82, 0.92);
      double size = pip / 60;
      text.append(
          String.format(
              Locale.ROOT,
              "inv-%06d,%s,%s,%.1f,%.1f,%.1f,%.1f,%.1f,%.1f,%.1f,%.1f,%d%n",
              i,
              random.nextBoolean() ? "right" : "left",
              digits.get(digit),
              pip * random.nextDouble(0.93, 1.02),
              pip,
              middle,
              middle * random.nextDouble(0.84, 0.92),
              size * random.nextDouble(18, 23),
              size * random.nextDouble(21, 26),
              size * random.nextDouble(19, 24),
              size * random.nextDouble(23, 27),
              5 * random.nextInt(7)));
    }
    return text.toString();
  }

  private static long processor() {
    return ManagementFactory.getPlatformMXBean(com.sun.management.OperatingSystemMXBean.class)
        .getProcessCpuTime();
  }

  /** Resident memory, where the system tells it; the heap's used part elsewhere. */
  private static String memory() {
    try {
      return Files.readAllLines(Path.of("/proc/self/status")).stream()
          .filter(line -> line.startsWith("VmRSS"))
          .map(line -> Long.parseLong(line.replaceAll("\\D", "")) / 1024 + " MB resident")
          .findFirst()
          .orElse("");
    } catch (IOException e) {
      Runtime runtime = Runtime.getRuntime();
      return ((runtime.totalMemory() - runtime.freeMemory()) >> 20) + " MB of heap";
    }
  }
}
