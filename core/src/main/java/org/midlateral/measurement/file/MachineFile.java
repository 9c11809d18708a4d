package org.midlateral.measurement.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.midlateral.measurement.Design.ProcessDesign;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.Machine;
import org.midlateral.measurement.Machine.Bed;
import org.midlateral.measurement.PrintProcess;
import org.midlateral.measurement.entry.Entry;
import org.midlateral.measurement.entry.Entry.NodeShape;
import org.midlateral.measurement.entry.EntryReader;
import org.midlateral.measurement.entry.FileText;

/**
 * Reads the profile of a machine: YAML, lengths in mm. What it does not say is as a usual machine
 * of its process has it.
 */
public final class MachineFile {
  /** A number that may stand there. */
  private record NumberKey(double least, double most, String unit) {
    String allowed() {
      return plain(least) + " to " + plain(most) + (unit.isEmpty() ? "" : " " + unit);
    }

    private static String plain(double number) {
      return number == Math.rint(number) ? "" + (long) number : "" + number;
    }
  }

  private static final Map<String, NumberKey> NUMBERS = new LinkedHashMap<>();
  private static final Map<String, List<String>> CHOICES = new LinkedHashMap<>();
  private static final String NAME = "[A-Za-z0-9][A-Za-z0-9._-]{0,39}";

  static {
    CHOICES.put("process", PrintProcess.all().stream().map(PrintProcess::name).toList());
    NUMBERS.put("bed.width", new NumberKey(20, 2000, "mm"));
    NUMBERS.put("bed.depth", new NumberKey(20, 2000, "mm"));
    NUMBERS.put("bed.height", new NumberKey(20, 2000, "mm"));
    NUMBERS.put("margin", new NumberKey(0, 50, "mm"));
    NUMBERS.put("spacing", new NumberKey(0, 50, "mm"));
    NUMBERS.put("nozzle", new NumberKey(0.1, 2, "mm"));
    NUMBERS.put("layer", new NumberKey(0.01, 1, "mm"));
    NUMBERS.put("least-wall", new NumberKey(0.2, 5, "mm"));
    NUMBERS.put("least-gap", new NumberKey(0.02, 2, "mm"));
    NUMBERS.put("overhang", new NumberKey(10, 89, "degrees from upright"));
    NUMBERS.put("shrinkage", new NumberKey(0, 5, "percent"));
    CHOICES.put("supports", List.of("yes", "no"));
    CHOICES.put("poses", List.of("any", "lying"));
  }

  /** How far a piece may be turned up where its layers are to run along the finger (degrees). */
  private static final double LYING = 30;

  /** Room at the bed's edge and between parts (mm); common practice, no source. */
  private static final double MARGIN = 5;

  private final String file;
  private final Map<String, Entry> given = new LinkedHashMap<>();
  private final List<InputError> errors = new ArrayList<>();

  /**
   * What came of reading one.
   *
   * @param machine empty where something is wrong
   * @param errors all that is
   */
  public record ReadMachine(Optional<Machine> machine, List<InputError> errors) {
    public ReadMachine {
      errors = List.copyOf(errors);
    }
  }

  private MachineFile(String file) {
    this.file = file;
  }

  /** Reads a file; nothing is thrown for a bad one. */
  public static ReadMachine read(Path file) {
    try {
      return new MachineFile(file.toString()).parse(FileText.read(file));
    } catch (FileText.Unreadable e) {
      return new ReadMachine(Optional.empty(), List.of(e.error()));
    }
  }

  private ReadMachine parse(String text) {
    EntryReader.Reading reading = EntryReader.read(text, file, "");
    errors.addAll(reading.errors());
    for (Entry entry : reading.entries()) {
      check(entry);
    }
    for (String key : List.of("name", "process", "bed.width", "bed.depth", "bed.height")) {
      if (!given.containsKey(key) && errors.stream().noneMatch(e -> e.key().equals(key))) {
        errors.add(new InputError(file, 0, key, "", allowed(key), "is missing: " + allowed(key)));
      }
    }
    return new ReadMachine(errors.isEmpty() ? Optional.of(machine()) : Optional.empty(), errors);
  }

  private static String allowed(String key) {
    if (NUMBERS.containsKey(key)) {
      return NUMBERS.get(key).allowed();
    }
    return CHOICES.containsKey(key)
        ? String.join(", ", CHOICES.get(key))
        : "1 to 40 letters, digits, dots, dashes or underscores";
  }

  private void check(Entry entry) {
    String key = entry.path();
    boolean section = entry.shape() == NodeShape.MAPPING && (key.isEmpty() || key.equals("bed"));
    // Of a list's items the list itself is told.
    if (section || key.contains("[")) {
      return;
    }
    boolean known = NUMBERS.containsKey(key) || CHOICES.containsKey(key) || key.equals("name");
    if (!known) {
      List<String> keys = new ArrayList<>(List.of("name"));
      keys.addAll(CHOICES.keySet());
      keys.addAll(NUMBERS.keySet());
      String all = String.join(", ", keys);
      errors.add(entry.place().error(key, entry.text(), all, "is not a key; allowed: " + all));
    } else if (entry.shape() != NodeShape.SCALAR || !isAllowed(key, entry.text().strip())) {
      String text = entry.text() + " is not allowed; allowed: " + allowed(key);
      errors.add(entry.place().error(key, entry.text(), allowed(key), text.strip()));
    } else {
      given.put(key, entry);
    }
  }

  private static boolean isAllowed(String key, String value) {
    if (CHOICES.containsKey(key)) {
      return CHOICES.get(key).contains(value);
    }
    if (!NUMBERS.containsKey(key)) {
      return value.matches(NAME);
    }
    if (!value.matches("\\d{1,5}(\\.\\d{1,6})?")) {
      return false;
    }
    double number = Double.parseDouble(value);
    return number >= NUMBERS.get(key).least && number <= NUMBERS.get(key).most;
  }

  private Machine machine() {
    PrintProcess usual =
        PrintProcess.all().stream()
            .filter(p -> p.name().equals(text("process", "")))
            .findFirst()
            .orElseThrow();
    String name = text("name", "");
    Map<String, String> sources = new LinkedHashMap<>(usual.sources());
    given.keySet().forEach(key -> sources.put(key, "the profile of " + name));
    boolean supports = text("supports", usual.supports() ? "yes" : "no").equals("yes");
    PrintProcess limits =
        new PrintProcess(
            usual.name(),
            usual.title(),
            number("least-wall", usual.leastWall()),
            number("least-gap", usual.leastGap()),
            // The laboratory knows its own machine: what it says goes before any guide.
            number("least-gap", usual.usualGap()),
            number("overhang", usual.overhang()),
            supports,
            usual.stands(),
            text("poses", "any").equals("lying") ? LYING : PrintProcess.ANY_POSE,
            sources);
    return new Machine(
        name,
        ProcessDesign.valueOf(usual.name().toUpperCase(Locale.ROOT)),
        limits,
        new Bed(number("bed.width", 0), number("bed.depth", 0), number("bed.height", 0)),
        number("margin", MARGIN),
        number("spacing", MARGIN),
        number("nozzle", 0),
        number("layer", 0),
        number("shrinkage", 0) / 100);
  }

  private String text(String key, String otherwise) {
    return given.containsKey(key) ? given.get(key).text().strip() : otherwise;
  }

  private double number(String key, double otherwise) {
    return given.containsKey(key) ? Double.parseDouble(text(key, "")) : otherwise;
  }
}
