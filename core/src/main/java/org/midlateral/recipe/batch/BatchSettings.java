package org.midlateral.recipe.batch;

import java.nio.file.Path;
import java.util.List;
import org.midlateral.document.format.SolidFormat;

/**
 * How a run goes.
 *
 * @param folder that exists, for the orders' folders and the report
 * @param formats of the solids' files
 * @param overrides each {@code KEY=VALUE}, laid over every order
 * @param threads that make orders
 */
public record BatchSettings(
    Path folder, List<SolidFormat> formats, List<String> overrides, int threads) {
  public BatchSettings {
    formats = List.copyOf(formats);
    overrides = List.copyOf(overrides);
  }

  List<String> formatKeys() {
    return formats.stream().map(SolidFormat::key).toList();
  }
}
