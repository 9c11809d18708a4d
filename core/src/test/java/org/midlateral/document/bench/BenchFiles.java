package org.midlateral.document.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.Orthosis;

/** The bench's files of the samples. */
public final class BenchFiles {
  /** As many as a sheet has with both pieces, and as long. */
  private static final List<SheetFigure> FIGURES =
      Stream.concat(
              IntStream.range(0, 10)
                  .mapToObj(i -> new SheetFigure("Force over joint " + i, 13.1, 12.6, 13.7, "N")),
              Stream.of(
                  new SheetFigure("EI at the PIP axis, trough", 0.117, 0.112, 0.123, "N·m²"),
                  new SheetFigure("With the shell bonded on", 1.3, Double.NaN, Double.NaN, "°")))
          .toList();

  private BenchFiles() {}

  /** A sample with some keys set otherwise. */
  public static Orthosis orthosis(String sample, String... overrides) throws Exception {
    Orders.Result read = Orders.read(Path.of("../samples/" + sample + ".yaml"), List.of(overrides));
    if (!read.ok()) {
      throw new IllegalArgumentException(read.errors().toString());
    }
    return Orthosis.make(read.order());
  }

  /** Its documents. */
  public static BenchDocuments of(Orthosis orthosis) {
    Order order = orthosis.order();
    return BenchDocuments.of(
        order,
        orthosis.digit(),
        orthosis.relief(),
        orthosis.solids(),
        new SheetFigures(
            Optional.of("Held at 3° (1 to 6°) of the 0° reached; 8 kPa at most."),
            List.of(
                new SheetFigures.PressedPlace(26, 1, 11.2),
                new SheetFigures.PressedPlace(50, -1, 6.7),
                new SheetFigures.PressedPlace(8, 0, 4.6)),
            FIGURES,
            Optional.of(new SheetFigures.Draws(60, 7, 1.5, 3))),
        PaperSize.usualWith(order.measurements().unit()));
  }

  /** One of them as it is written. */
  public static byte[] bytes(BenchDocuments documents, String name) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    documents.files().get(name).writeTo(out);
    return out.toByteArray();
  }
}
