package org.midlateral.recipe.record;

import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.midlateral.document.Digest;
import org.midlateral.json.RecordJson;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.OrderText;

/**
 * The record beside an order's files. Sizes in bytes, settings in the units and words of a
 * measurement file.
 *
 * @param form of the record itself, {@value #FORM}
 * @param program that made them
 * @param made when, by the machine's clock (ISO 8601, UTC); null where the same input is to give
 *     the same bytes
 * @param reference of the order
 * @param state what came of it: {@code made}, {@code partly}, {@code refused} or {@code wrong}
 * @param text why it was refused, or its cautions
 * @param notes what else was found
 * @param revision from 1, one more with each other making of the same reference in this place; 0
 *     where nothing was made
 * @param former where the making before it lies, beside the orders' folders; null where there is
 *     none
 * @param source as it was asked for
 * @param settings every key as it was understood, defaults among them
 * @param labels what is raised on each part that bears a label
 * @param figures of what was made; null where nothing was
 * @param files by name, all but the record's own
 * @param workshop room for what the program cannot know
 * @param seal SHA-256 of all the rest but the workshop's
 */
public record MakingRecord(
    String form,
    Program program,
    String made,
    String reference,
    String state,
    String text,
    String notes,
    int revision,
    String former,
    MakingSource source,
    Map<String, String> settings,
    Map<String, String> labels,
    MakingFigures figures,
    Map<String, MadeFile> files,
    Workshop workshop,
    String seal) {
  /** Name of the record's own file. */
  public static final String FILE = "record.json";

  private static final String FORM = "midlateral-making-1";
  private static final long LARGEST = 1 << 20;

  /** Reads records; made when the first is read. */
  private static final class Reader {
    static final ObjectMapper JSON =
        JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();
  }

  public MakingRecord {
    Objects.requireNonNull(form);
    Objects.requireNonNull(program);
    Objects.requireNonNull(reference);
    Objects.requireNonNull(state);
    Objects.requireNonNull(text);
    Objects.requireNonNull(notes);
    Objects.requireNonNull(source);
    Objects.requireNonNull(workshop);
    Objects.requireNonNull(seal);
    settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
    labels = Collections.unmodifiableMap(new TreeMap<>(labels));
    files = Collections.unmodifiableMap(new TreeMap<>(files));
  }

  /** What a making came to, as {@link #of} takes it. */
  public record RecordedResult(
      String state,
      String text,
      String notes,
      Map<String, String> labels,
      Optional<MakingFigures> figures) {
    /** Of nothing. */
    public static RecordedResult none(String state, String text) {
      return new RecordedResult(state, text, "", Map.of(), Optional.empty());
    }
  }

  /** A making among those of the same reference, as {@link #of} takes it. */
  public record RecordedPlace(int revision, Optional<String> former, Optional<Instant> made) {}

  /**
   * The record of a making.
   *
   * @param order as it was understood; empty where it could not be
   */
  public static MakingRecord of(
      String reference,
      Optional<Order> order,
      MakingSource source,
      RecordedResult result,
      RecordedPlace place,
      Map<String, MadeFile> files) {
    return new MakingRecord(
            FORM,
            Program.current(),
            place.made().map(time -> time.truncatedTo(ChronoUnit.SECONDS).toString()).orElse(null),
            reference,
            result.state(),
            result.text(),
            result.notes(),
            place.revision(),
            place.former().orElse(null),
            source,
            order.map(MakingRecord::settings).orElse(Map.of()),
            result.labels(),
            result.figures().orElse(null),
            files,
            Workshop.BLANK,
            "")
        .sealed();
  }

  private static Map<String, String> settings(Order order) {
    Map<String, String> settings = new LinkedHashMap<>(OrderText.settings(order));
    order.machine().ifPresent(machine -> settings.putAll(machine.settings()));
    return settings;
  }

  private MakingRecord sealed() {
    return with(workshop, digest());
  }

  private MakingRecord with(Workshop filled, String digest) {
    return new MakingRecord(
        form, program, made, reference, state, text, notes, revision, former, source, settings,
        labels, figures, files, filled, digest);
  }

  private String digest() {
    return Digest.of(with(Workshop.BLANK, "").json().getBytes(StandardCharsets.UTF_8));
  }

  /** Whether nothing but the workshop's part was changed since it was written. */
  public boolean isSealed() {
    return seal.equals(digest());
  }

  /** The name of a part of it in other files: reference, hand, digit, part, revision and commit. */
  public String title(String part) {
    return String.join(
        " ",
        reference,
        settings.getOrDefault("hand", ""),
        settings.getOrDefault("digit", ""),
        part,
        "r" + revision,
        program.build());
  }

  /** Whether it speaks of what this program would make of an input. */
  public boolean isOf(MakingSource other) {
    return program.makesTheSameAs(Program.current()) && source.input().equals(other.input());
  }

  /** The file's text, ending with a line feed. */
  public String json() {
    return RecordJson.EXACT.text(this);
  }

  /** The record in a folder, if there is one, whole and as it was sealed. */
  public static Optional<MakingRecord> in(Path folder) {
    Path file = folder.resolve(FILE);
    try {
      if (!Files.isRegularFile(file) || Files.size(file) > LARGEST) {
        return Optional.empty();
      }
      MakingRecord read = Reader.JSON.readValue(file.toFile(), MakingRecord.class);
      return Optional.ofNullable(read).filter(MakingRecord::isSealed);
    } catch (IOException e) {
      // Damaged: it counts for nothing.
      return Optional.empty();
    }
  }
}
