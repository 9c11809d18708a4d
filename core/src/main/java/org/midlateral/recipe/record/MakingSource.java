package org.midlateral.recipe.record;

import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import org.midlateral.document.Digest;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.OrderText;

/**
 * What was asked for, as it was written.
 *
 * @param place the file's name, and the line where it is one of many
 * @param stated what a table's row states, each {@code KEY=VALUE}; empty of a measurement file
 * @param overrides each {@code KEY=VALUE}, laid over it
 * @param formats of the solids' files
 * @param options of the command that change what is made
 * @param input SHA-256 of all of it, the text of the row or file with it
 */
public record MakingSource(
    String place,
    List<String> stated,
    List<String> overrides,
    List<String> formats,
    List<String> options,
    String input) {
  public MakingSource {
    stated = List.copyOf(stated);
    overrides = List.copyOf(overrides);
    formats = List.copyOf(formats);
    options = List.copyOf(options);
  }

  /**
   * The same with its digest.
   *
   * @param text of the row or the measurement file
   */
  public static MakingSource of(
      String place,
      String text,
      List<String> stated,
      List<String> overrides,
      List<String> formats,
      List<String> options) {
    String all = String.join("\u0000", text, "" + overrides, "" + formats, "" + options);
    String input = Digest.of(all.getBytes(StandardCharsets.UTF_8));
    return new MakingSource(place, stated, overrides, formats, options, input);
  }

  /**
   * An order of its own.
   *
   * @param place name of its file
   * @param order as it was read
   * @param overrides each {@code KEY=VALUE}, that were laid over the file
   */
  public static MakingSource of(
      String place, Order order, List<String> overrides, Collection<SolidFormat> formats) {
    return of(
        place,
        OrderText.write(order),
        List.of(),
        overrides,
        formats.stream().map(SolidFormat::key).toList(),
        order.machine().map(m -> List.of("machine=" + m.settings())).orElse(List.of()));
  }
}
