package org.midlateral.recipe.batch;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.midlateral.document.Content;
import org.midlateral.document.Defect;
import org.midlateral.document.FileProblem;
import org.midlateral.document.WholeFile;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.batch.Outcome.OrderState;
import org.midlateral.recipe.product.FormerParts;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;
import org.midlateral.recipe.product.ProductWriter;

/**
 * One order, from what was read to its folder.
 *
 * @param raw as it stands in its source
 * @param read the order in it, with cautions
 * @param folder its folder's name
 * @param settings of the run
 */
record OrderJob(RawOrder raw, Orders.Result read, String folder, BatchSettings settings)
    implements Callable<Outcome> {

  @Override
  public Outcome call() {
    try {
      return run();
    } catch (FileProblem e) {
      if (stopsAll(e)) {
        throw e;
      }
      return outcome(OrderState.UNWRITTEN, e.getMessage());
    } catch (RuntimeException | StackOverflowError e) {
      return defect(e);
    }
  }

  /** The rest of the batch goes on; what is needed to mend it lies in the order's folder. */
  private Outcome defect(Throwable e) {
    List<String> command = new ArrayList<>(List.of("midlateral batch"));
    settings.formatKeys().forEach(format -> command.add("--format " + format));
    Defect defect = new Defect(e, command, List.of(read.order()));
    String request = Defect.request(defect.write(Optional.of(home())));
    return outcome(OrderState.DEFECT, "a defect, " + request + ": " + defect.inShort());
  }

  private Path home() {
    return settings.folder().resolve(folder);
  }

  /** Whether no other order could be written either. */
  private boolean stopsAll(FileProblem problem) {
    Path all = settings.folder();
    return switch (problem.kind()) {
      case FULL, FAILED -> true;
      case EXISTS, IS_FOLDER, NOT_A_FOLDER, NO_FOLDER, NOT_ALLOWED ->
          !Files.isDirectory(all) || !Files.isWritable(all);
    };
  }

  private Outcome run() {
    Path home = home();
    String input = MadeFrom.digest(raw.text(), settings.overrides(), settings.formatKeys());
    Optional<MadeFrom> before = MadeFrom.in(home);
    if (before.isPresent() && before.get().isOf(MadeFrom.program(), input)) {
      OrderState state = before.get().state();
      return outcome(state == OrderState.MADE ? OrderState.UNCHANGED : state, before.get().text());
    }
    // There is another order for every other core.
    Product product = ProductRecipe.make(read.order(), read.cautions(), Runnable::run);
    String text = told(product);
    Map<String, byte[]> files = new LinkedHashMap<>();
    ProductWriter.files(product, product.isMade() ? settings.formats() : List.of())
        .forEach((n, c) -> files.put(n, bytes(c)));
    Map<String, Long> sizes = new TreeMap<>();
    files.forEach((name, bytes) -> sizes.put(name, (long) bytes.length));
    OrderState state = OrderState.of(product);
    MadeFrom made = new MadeFrom(MadeFrom.program(), input, state, text, sizes);
    place(home, files, made);
    return outcome(state, text);
  }

  /**
   * The record goes first and comes back last: without it, what stands there counts for nothing.
   */
  private static void place(Path home, Map<String, byte[]> files, MadeFrom made) {
    WholeFile.makeFolder(home);
    try {
      Files.deleteIfExists(home.resolve(MadeFrom.FILE));
      Files.deleteIfExists(home.resolve(Defect.FILE));
      for (Path former : FormerParts.in(home, files.keySet())) {
        Files.deleteIfExists(former);
      }
    } catch (IOException e) {
      throw FileProblem.of(home, e);
    }
    Map<Path, Content> all = new LinkedHashMap<>();
    files.forEach((name, bytes) -> all.put(home.resolve(name), out -> out.write(bytes)));
    byte[] record = made.json().getBytes(StandardCharsets.UTF_8);
    all.put(home.resolve(MadeFrom.FILE), out -> out.write(record));
    WholeFile.writeAll(all, true);
  }

  private static byte[] bytes(Content content) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 20);
    try {
      content.writeTo(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static String told(Product product) {
    return product.findings().stream()
        .filter(f -> f.severity() != Finding.Severity.NOTE)
        .filter(f -> product.isMade() || f.severity() == Finding.Severity.REFUSAL)
        .map(Finding::text)
        .collect(Collectors.joining(" "));
  }

  private Outcome outcome(OrderState state, String text) {
    return new Outcome(raw.place(), read.order().measurements().reference(), folder, state, text);
  }
}
