package org.midlateral.document.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.midlateral.document.drawing.Paper;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.Orders;
import org.midlateral.recipe.Orthosis;

/** The bench's files of the samples. */
public final class BenchFiles {
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
        List.of(
            new SheetFigure("proximal force", 3.1, 2.6, 3.7, "N"),
            new SheetFigure("extension lost", 1.3, Double.NaN, Double.NaN, "°")),
        Paper.usualWith(order.measurements().unit()));
  }

  /** One of them as it is written. */
  public static byte[] bytes(BenchDocuments documents, String name) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    documents.files().get(name).writeTo(out);
    return out.toByteArray();
  }
}
