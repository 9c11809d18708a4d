package org.midlateral.recipe.batch;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.batch.BatchSettings.RunOption;
import org.midlateral.recipe.batch.Outcome.OrderState;

/**
 * A batch in a process of its own, for tests that kill it or bound its memory. Arguments: the
 * source, then the folder to write into, or nothing to read and check all orders only. Prints the
 * counts.
 */
final class BatchProcess {
  private BatchProcess() {}

  public static void main(String[] arguments) throws Exception {
    try (OrderSource source = OrderSources.open(Path.of(arguments[0]))) {
      if (arguments.length > 1) {
        System.out.println(run(source, Path.of(arguments[1])));
      } else {
        System.out.println(check(source));
      }
    }
  }

  private static Map<OrderState, Long> run(OrderSource source, Path folder) throws Exception {
    return Batch.run(source, settings(folder), outcome -> {});
  }

  /** Every record of the same moment, so that two runs' folders can be compared. */
  static BatchSettings settings(Path folder) {
    Clock clock = Clock.fixed(Instant.parse("2026-03-01T08:00:00Z"), ZoneOffset.UTC);
    return new BatchSettings(folder, List.of(SolidFormat.STL), List.of(), 2)
        .with(clock)
        .with(Set.of(RunOption.NO_LABEL));
  }

  private static Map<OrderState, Long> check(OrderSource source) throws IOException {
    Map<OrderState, Long> counts = new EnumMap<>(OrderState.class);
    Names names = new Names();
    for (Optional<RawOrder> raw = source.next(); raw.isPresent(); raw = source.next()) {
      Orders.Result read = raw.get().read().apply(List.of());
      OrderState state = OrderState.WRONG;
      if (read.ok()) {
        boolean isNew = names.folder(read.order().measurements().reference()).isPresent();
        state = isNew ? OrderState.MADE : OrderState.DUPLICATE;
      }
      counts.merge(state, 1L, Long::sum);
    }
    return counts;
  }

  /** Starts it with this test's own class path. */
  static Process start(String memory, File said, String... arguments) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(
        List.of("-Xmx" + memory, "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xshare:auto"));
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.add(BatchProcess.class.getName());
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said).start();
  }
}
