package org.midlateral.recipe.batch;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.midlateral.document.FileProblem;
import org.midlateral.document.SafeName;
import org.midlateral.recipe.batch.BatchSettings.RunOption;
import org.midlateral.recipe.batch.Outcome.OrderState;
import org.midlateral.recipe.record.MakingRecord;

/**
 * Folders of a run before that no order of this one has made: of rows that were taken away, and of
 * orders that are wrong now. Nobody may print what lies there.
 */
final class ObsoleteOrders {
  private final BatchSettings settings;

  /** By reference; only orders that a run before has made a folder for. */
  private final Map<String, WrongOrder> wrong = new HashMap<>();

  /** By the file's name, where that is all that is known. */
  private final Map<String, WrongOrder> wrongFiles = new HashMap<>();

  private record WrongOrder(RawOrder raw, Outcome outcome) {}

  ObsoleteOrders(BatchSettings settings) {
    this.settings = settings;
  }

  /** Keeps in mind an order that cannot be read. */
  void wrong(RawOrder raw, Outcome outcome) {
    String reference = raw.reference();
    if (reference.isEmpty() && raw.isFile()) {
      wrongFiles.put(raw.placeAlone(), new WrongOrder(raw, outcome));
    } else if (!reference.isEmpty()
        && (Files.isDirectory(settings.folder().resolve(SafeName.of(reference)))
            || Files.isDirectory(settings.folder().resolve(SafeName.apart(reference))))) {
      wrong.put(reference, new WrongOrder(raw, outcome));
    }
  }

  /**
   * Moves away what no order has.
   *
   * @param names of the folders that the run's orders have
   * @return what was done with each
   */
  List<Outcome> clear(Names names) {
    List<Outcome> done = new ArrayList<>();
    try (DirectoryStream<Path> all =
        Files.newDirectoryStream(settings.folder(), ObsoleteOrders::isOrder)) {
      for (Path home : all) {
        String folder = home.getFileName().toString();
        if (!names.isTaken(folder)) {
          clear(home, folder).ifPresent(done::add);
        }
      }
    } catch (IOException e) {
      throw FileProblem.of(settings.folder(), e);
    }
    return done;
  }

  private static boolean isOrder(Path home) {
    return Files.isRegularFile(home.resolve(MakingRecord.FILE))
        && !home.endsWith(Superseded.FOLDER);
  }

  private Optional<Outcome> clear(Path home, String folder) {
    Optional<MakingRecord> record = MakingRecord.in(home);
    String reference = record.map(MakingRecord::reference).orElse(folder);
    WrongOrder file = record.map(r -> wrongFiles.get(r.source().place())).orElse(null);
    WrongOrder now = wrong.getOrDefault(reference, file);
    if (now == null && settings.has(RunOption.KEEP_OTHERS)) {
      return Optional.empty();
    }
    if (now != null && record.isPresent() && record.get().isOf(settings.source(now.raw))) {
      return Optional.empty();
    }
    Optional<String> former =
        now == null ? settings.superseded().take(folder) : why(folder, reference, now);
    if (former.isEmpty()) {
      return Optional.empty();
    }
    String text =
        now == null
            ? "is not among the orders any more"
            : "is wrong now, " + now.outcome.place() + " tells why";
    String place = now == null ? "" : now.outcome.place();
    return Optional.of(
        new Outcome(
            place, reference, folder, OrderState.SUPERSEDED, text, former.get(), Optional.empty()));
  }

  /** Leaves a record of why in the folder. */
  private Optional<String> why(String folder, String reference, WrongOrder now) {
    Superseded superseded = settings.superseded();
    int former = Math.max(superseded.highest(folder), superseded.standing(folder));
    MakingRecord record =
        MakingRecord.of(
            reference,
            Optional.empty(),
            settings.source(now.raw),
            MakingRecord.RecordedResult.none(OrderState.WRONG.word(), now.outcome.text()),
            new MakingRecord.RecordedPlace(
                0,
                former == 0 ? Optional.empty() : Optional.of(Superseded.place(folder, former)),
                Optional.of(settings.clock().instant())),
            Map.of());
    return new OrderFolder(settings.folder(), superseded).place(folder, Map.of(), record);
  }
}
