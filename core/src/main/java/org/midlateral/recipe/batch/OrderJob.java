package org.midlateral.recipe.batch;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.midlateral.document.Content;
import org.midlateral.document.Defect;
import org.midlateral.document.FileProblem;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.batch.BatchSettings.RunOption;
import org.midlateral.recipe.batch.Outcome.OrderState;
import org.midlateral.recipe.product.PartNames;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;
import org.midlateral.recipe.product.ProductWriter;
import org.midlateral.recipe.record.FolderCheck;
import org.midlateral.recipe.record.MadeFile;
import org.midlateral.recipe.record.MakingRecord;
import org.midlateral.recipe.record.MakingSource;
import org.midlateral.recipe.record.RecordSheet;

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
      return outcome(OrderState.UNWRITTEN, e.getMessage(), "", Optional.empty());
    } catch (RuntimeException | StackOverflowError e) {
      return defect(e);
    }
  }

  /** The rest of the batch goes on; what is needed to mend it lies in the order's folder. */
  private Outcome defect(Throwable e) {
    List<String> command = new ArrayList<>(List.of("midlateral batch"));
    settings.formatKeys().forEach(format -> command.add("--format " + format));
    Defect defect = new Defect(e, command, List.of(read.order()));
    Optional<String> former = Optional.empty();
    try {
      former = settings.superseded().take(folder);
    } catch (FileProblem problem) {
      // The defect is what is to be told; the next run that makes the order moves what was left.
      command.add("(its former files cannot be moved)");
    }
    String request = Defect.request(defect.write(Optional.of(home())));
    return outcome(
        OrderState.DEFECT,
        "a defect, " + request + ": " + defect.inShort(),
        former.orElse(""),
        Optional.empty());
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
    MakingSource source = settings.source(raw);
    Optional<MakingRecord> same = MakingRecord.in(home).filter(r -> isOf(r, source));
    if (same.isPresent()
        && FolderCheck.stands(home, same.get(), settings.has(RunOption.THOROUGH))) {
      return unchanged(same.get());
    }
    Superseded superseded = settings.superseded();
    int highest = superseded.highest(folder);
    int former = Math.max(highest, superseded.standing(folder));
    int revision = same.map(MakingRecord::revision).orElse(1 + former);
    Product product = made();
    PartNames names = new PartNames(read.order(), revision, settings.has(RunOption.FULL_NAMES));
    Optional<String> before =
        revision > 1
            ? Optional.of(Superseded.place(folder, same.isPresent() ? revision - 1 : former))
            : Optional.empty();
    MakingRecord.RecordedPlace placed =
        new MakingRecord.RecordedPlace(revision, before, Optional.of(settings.clock().instant()));
    Map<String, byte[]> files = new LinkedHashMap<>();
    ProductWriter.files(product, product.isMade() ? settings.formats() : List.of(), names)
        .forEach((name, content) -> files.put(name, bytes(content)));
    MakingRecord record = record(product, source, placed, files);
    if (product.documents().isPresent()) {
      files.put(RecordSheet.FILE, RecordSheet.pdf(record));
      record = record(product, source, placed, files);
    }
    OrderFolder place = new OrderFolder(settings.folder(), superseded);
    String moved = "";
    if (same.isPresent()) {
      place.mend(folder, files, record);
    } else {
      moved = place.place(folder, files, record).orElse("");
    }
    return outcome(OrderState.of(product), record.text(), moved, Optional.of(record));
  }

  private Product made() {
    Product product = ProductRecipe.make(read.order(), read.cautions());
    return settings.has(RunOption.SHEETS) ? ProductRecipe.withDocuments(product) : product;
  }

  private static MakingRecord record(
      Product product,
      MakingSource source,
      MakingRecord.RecordedPlace place,
      Map<String, byte[]> files) {
    Map<String, MadeFile> made = new TreeMap<>();
    files.forEach((name, bytes) -> made.put(name, MadeFile.of(bytes)));
    return ProductWriter.record(product, source, place, made);
  }

  /** Whether a record is of the same input, and of a making that need not be tried again. */
  private static boolean isOf(MakingRecord record, MakingSource source) {
    return record.isOf(source) && record.revision() > 0;
  }

  private Outcome unchanged(MakingRecord record) {
    OrderState state = OrderState.of(record.state()).orElseThrow();
    return outcome(
        state == OrderState.MADE ? OrderState.UNCHANGED : state,
        record.text(),
        "",
        Optional.of(record));
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

  private Outcome outcome(
      OrderState state, String text, String former, Optional<MakingRecord> record) {
    String reference = read.order().measurements().reference();
    return new Outcome(raw.place(), reference, folder, state, text, former, record);
  }
}
