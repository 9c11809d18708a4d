package org.midlateral.measurement.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.midlateral.measurement.Caution;
import org.midlateral.measurement.Digit;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Material;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.entry.Entry;
import org.midlateral.measurement.entry.Entry.Place;
import org.midlateral.measurement.entry.EntryReader;
import org.midlateral.measurement.entry.FileText;
import org.midlateral.measurement.entry.Setting;
import org.midlateral.measurement.key.AllowedRange;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.measurement.key.Shown;
import org.midlateral.measurement.key.ValueKind;
import org.midlateral.measurement.privacy.PersonalData;

/** Reads measurement files. */
public final class Orders {

  /**
   * What came of reading one: an order with perhaps some cautions, or errors.
   *
   * @param order what was read; null where it was refused
   * @param errors all that is wrong; empty where there is an order
   * @param cautions values that are allowed and unusual
   */
  public record Result(Order order, List<InputError> errors, List<Finding> cautions) {
    public Result {
      errors = List.copyOf(errors);
      cautions = List.copyOf(cautions);
    }

    /** Whether there is an order. */
    public boolean ok() {
      return order != null;
    }
  }

  private Orders() {}

  /** Loads the tables by which every file is read; a program that will read one may do it early. */
  public static void prepare() {
    KeyTable.standard();
    Material.all();
    Caution.all();
    PersonalData.prepare();
  }

  /**
   * Reads a file.
   *
   * @param file YAML 1.2 or JSON, UTF-8, at most 1 MiB
   * @param overrides each {@code KEY=VALUE}, going before what the file says
   * @return the order, or every error at once; nothing is thrown for a bad file
   */
  public static Result read(Path file, List<String> overrides) {
    try {
      return parse(FileText.read(file), file.toString(), overrides);
    } catch (FileText.Unreadable e) {
      return new Result(null, List.of(e.error()), List.of());
    }
  }

  /**
   * Reads a text.
   *
   * @param text YAML 1.2 or JSON
   * @param fileName as messages name it
   * @param overrides each {@code KEY=VALUE}, going before what the text says
   * @return the order, or every error at once
   */
  public static Result parse(String text, String fileName, List<String> overrides) {
    return of(EntryReader.read(text, fileName, ""), fileName, overrides);
  }

  /**
   * Reads a row of a table.
   *
   * @param cells each {@code KEY=VALUE}, with the key's whole path
   * @param fileName of the table as messages name it
   * @param line of the row, from 1
   * @param overrides each {@code KEY=VALUE}, going before what the row says
   * @return the order, or every error at once
   */
  public static Result row(List<String> cells, String fileName, int line, List<String> overrides) {
    Place place = new Place(fileName, line);
    return of(Overrides.over(List.of(), cells, place), fileName, overrides);
  }

  /**
   * What is wrong with overrides whatever the file says: keys that there are not, and values that
   * would be refused in every unit the file may have.
   *
   * @param overrides each {@code KEY=VALUE}
   */
  public static List<InputError> wrongOverrides(List<String> overrides) {
    List<InputError> wrong = wrong(overrides, LengthUnit.MM);
    for (LengthUnit unit : LengthUnit.values()) {
      List<InputError> also = wrong(overrides, unit);
      wrong.removeIf(error -> also.stream().noneMatch(other -> other.key().equals(error.key())));
    }
    return wrong;
  }

  /** As if the file said nothing but its unit. */
  private static List<InputError> wrong(List<String> overrides, LengthUnit unit) {
    List<Entry> file = Overrides.over(List.of(), List.of("unit=" + unit.symbol())).entries();
    EntryReader.Reading laid = Overrides.over(file, overrides);
    List<InputError> errors = new ArrayList<>(laid.errors());
    errors.addAll(EntryCheck.check(laid.entries(), "--set", false).errors());
    return errors;
  }

  /** Entries that were read already. */
  static Result of(EntryReader.Reading file, String fileName, List<String> overrides) {
    EntryReader.Reading merged = Overrides.over(file.entries(), overrides);
    EntryCheck.CheckedEntries checked =
        EntryCheck.check(merged.entries(), fileName, file.complete());
    Settings settings = new Settings(checked.settings());

    List<InputError> errors = new ArrayList<>(file.errors());
    errors.addAll(merged.errors());
    errors.addAll(checked.errors());
    List<Finding> cautions = unusual(checked);
    for (String words : List.of("reference", "note")) {
      settings.given(words).flatMap(PersonalData::caution).ifPresent(cautions::add);
    }
    if (checked.unitKnown()) {
      Optional<InputError> otherUnit = UnitGuess.check(merged.entries(), checked.unit(), fileName);
      // The wrong unit is the one fault: that each length is out of range follows from it.
      otherUnit.ifPresent(unit -> errors.removeIf(Orders::isOfLength));
      otherUnit.ifPresent(errors::add);
      CrossCheck.CrossChecked crossed = CrossCheck.check(settings);
      if (otherUnit.isEmpty()) {
        errors.addAll(crossed.errors());
      }
      cautions.addAll(crossed.cautions());
      cautions.addAll(SwapCheck.check(settings));
    }
    if (!errors.isEmpty()) {
      errors.sort(
          Comparator.comparing((InputError error) -> !error.key().equals("unit"))
              .thenComparingInt(InputError::line));
      return new Result(null, errors, List.of());
    }
    return new Result(new OrderBuilder(settings).order(), List.of(), cautions);
  }

  /** Whether an error is about the value of a length, which its unit may be to blame for. */
  private static boolean isOfLength(InputError error) {
    return !error.value().isEmpty()
        && KeyTable.standard()
            .find(error.key())
            .map(key -> key.kind() == ValueKind.LENGTH)
            .orElse(false);
  }

  private static List<Finding> unusual(EntryCheck.CheckedEntries checked) {
    List<Finding> cautions = new ArrayList<>();
    Optional<Digit> digit =
        Optional.ofNullable(checked.settings().get("digit")).map(Setting::word).flatMap(Digit::of);
    checked.settings().entrySet().stream()
        .sorted(Comparator.comparingInt(entry -> entry.getValue().place().line()))
        .forEach(
            entry ->
                unusual(entry.getKey(), entry.getValue(), checked.unit(), digit)
                    .ifPresent(cautions::add));
    return cautions;
  }

  /** As in "a ring finger", "an index finger". */
  private static String fingerOf(Optional<Digit> digit) {
    return digit.map(d -> (d == Digit.INDEX ? "n " : " ") + d.key() + " finger").orElse("");
  }

  /** A caution about a value outside what is usual. */
  static Optional<Finding> unusual(
      String path, Setting setting, LengthUnit unit, Optional<Digit> digit) {
    InputKey key = setting.key().of(digit);
    double value = setting.number();
    boolean beside = key.or().contains(Shown.number(value));
    if (Double.isNaN(value)
        || beside
        || key.usual().map(range -> range.contains(value)).orElse(true)) {
      return Optional.empty();
    }
    AllowedRange usual = key.usual().orElseThrow();
    String text =
        String.format(
            Locale.ROOT,
            "%s: %s is unusual; %s is usual%s.",
            path,
            setting.written(),
            Shown.range(usual, key, unit),
            key.equals(setting.key()) ? "" : " of a" + fingerOf(digit));
    return Optional.of(
        Finding.caution("unusual-value", path, text, value, usual.nearestEnd(value)));
  }
}
