package org.midlateral.recipe.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.document.Defect;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.batch.Outcome.OrderState;

class OrderJobTest {
  @TempDir Path folder;

  private Outcome run(Orders.Result read) {
    RawOrder raw = new RawOrder("table:2", "inv-a", "text", List.of(), overrides -> read);
    BatchSettings settings = new BatchSettings(folder, List.of(SolidFormat.STL), List.of(), 1);
    return new OrderJob(raw, read, "inv-a", settings).call();
  }

  /** No file can ask for a piece without a design: what comes of it is nobody's outcome. */
  @Test
  void aDefectLeavesItsFileInTheOrdersFolder() throws Exception {
    Orders.Result read =
        Orders.read(
            Path.of("../samples/slim-little.yaml"),
            List.of("reference=inv-a", "note=of no one", "dorsal-shell.make=no"));
    Order order = read.order();
    Order broken = new Order(order.measurements(), null, order.note());
    Path file = folder.resolve("inv-a").resolve(Defect.FILE);

    Outcome outcome = run(new Orders.Result(broken, List.of(), List.of()));

    assertThat(outcome.state()).isEqualTo(OrderState.DEFECT);
    assertThat(outcome.text())
        .startsWith("a defect, please report it with " + file + ": NullPointerException at ");
    assertThat(Files.readString(file))
        .contains("# java.lang.NullPointerException", "    at org.midlateral.recipe.")
        .contains("# Command: midlateral batch --format stl\n")
        .doesNotContain("inv-a", "of no one");
    assertThat(file.resolveSibling("report.json")).doesNotExist();

    assertThat(run(read).state()).isEqualTo(OrderState.MADE);
    assertThat(file).doesNotExist();
    assertThat(file.resolveSibling("report.json")).exists();
  }
}
