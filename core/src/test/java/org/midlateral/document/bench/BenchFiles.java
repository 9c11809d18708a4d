package org.midlateral.document.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
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
    return BenchDrawings.of(
            order, orthosis.digit(), orthosis.relief(), orthosis.solids(), PaperSize.of(order))
        .all(
            new SheetFigures(
                Optional.of("Held 3° (1 to 6°) short of full extension"),
                Optional.of(
                    new SheetFigures.PressedPlace(
                        26, 1, 11.2, "under the dorsal shell over the PIP joint, radial side")),
                Optional.of(new SheetFigures.ThreeForces(1.31, 2.55, 1.24))));
  }

  /** One of them as it is written. */
  public static byte[] bytes(BenchDocuments documents, String name) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    documents.files().get(name).writeTo(out);
    return out.toByteArray();
  }
}
