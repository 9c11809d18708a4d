package org.midlateral.measurement.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.midlateral.measurement.Caution;
import org.midlateral.measurement.Design.Making;
import org.midlateral.measurement.Digit;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.entry.LengthText;
import org.midlateral.measurement.entry.YamlLines;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.measurement.key.Shown;
import org.midlateral.measurement.key.ValueKind;

/**
 * A commented measurement file to start from: first how the pieces are made and what every file
 * must state, then every other key of the table that is of use for that way.
 */
public final class Template {

  private static final String ENOUGH =
      "---- Enough to begin with. Every value below is the default and may stay as it is. ----";

  /** Answered before all others. */
  private static final List<String> FIRST = List.of("making", "unit");

  private final LengthUnit unit;
  private final Making making;
  private final YamlLines lines = new YamlLines();

  private Template(LengthUnit unit, Making making) {
    this.unit = unit;
    this.making = making;
  }

  /**
   * The file for pieces that are printed; its measurements are an invented example.
   *
   * @param unit the measurements are written in; choices of the design stay in mm
   * @return YAML that can be read as it stands
   */
  public static String text(LengthUnit unit) {
    return text(unit, Making.PRINT);
  }

  /**
   * The file for a way of making; keys that are of no use for it are left out.
   *
   * @param unit the measurements are written in; choices of the design stay in mm
   * @param making by hand or printed; where it is left open, no key is left out
   * @return YAML that can be read as it stands
   */
  public static String text(LengthUnit unit, Making making) {
    return new Template(unit, making).text();
  }

  private String text() {
    lines.comment("", "Measurements of one finger, and what is chosen for its orthosis.");
    lines.comment("", "The measurements below are an invented example: replace them by your own.");
    lines.comment("", "No person's name belongs in this file.");
    Caution.all().stream()
        .filter(caution -> caution.code().equals("estimate"))
        .forEach(caution -> lines.comment("", caution.text()));
    lines.comment("", "In brackets: the reading's place on the measuring form.");
    lines.space();
    lines.comment("", "A line that begins with # is not read, nor is what follows a # in a line.");
    lines.comment("", "To fill in an optional reading, as #dip: below, take away the # before it.");
    List<InputKey> keys =
        KeyTable.standard().keys().stream().filter(key -> !key.isOfItem() && isShown(key)).toList();
    lines.space().comment("", other());
    keys.stream().filter(key -> FIRST.contains(key.path())).forEach(this::key);
    keys.stream().filter(this::isEnough).forEach(this::key);
    lines.space().comment("", ENOUGH);
    keys.stream().filter(key -> !FIRST.contains(key.path()) && !isEnough(key)).forEach(this::key);
    return lines.text();
  }

  private boolean isShown(InputKey key) {
    return making == Making.AUTO || key.isFor(word(making));
  }

  /** Whether a file must state it, or it stands in a section with others that it must. */
  private boolean isEnough(InputKey key) {
    return key.required()
        || KeyTable.standard().keys().stream()
            .anyMatch(
                other ->
                    other.required()
                        && !other.section().isEmpty()
                        && other.section().equals(key.section()));
  }

  /** How to get the file for the other way of making. */
  private String other() {
    Making otherWay = making == Making.HAND ? Making.PRINT : Making.HAND;
    return "For pieces that are "
        + (otherWay == Making.HAND ? "moulded by hand" : "printed")
        + " begin with midlateral template --making "
        + word(otherWay)
        + " instead.";
  }

  private static String word(Making making) {
    return making.name().toLowerCase(Locale.ROOT);
  }

  private void key(InputKey key) {
    openSections(key.section());
    String letter = key.letter().map(at -> "(" + at + ") ").orElse("");
    lines.comment(key.section(), letter + key.comment());
    if (key.kind() == ValueKind.LIST) {
      items(key);
    }
    String value = value(key);
    String note = "  # " + facts(key);
    if (value.isEmpty()) {
      lines.blank(key.path(), note);
    } else {
      lines.value(key.path(), value + note);
    }
  }

  private void openSections(String section) {
    if (section.isEmpty() || lines.isOpen(section)) {
      return;
    }
    String outer = section.contains(".") ? section.substring(0, section.lastIndexOf('.')) : "";
    openSections(outer);
    if (outer.isEmpty()) {
      lines.space();
    }
    lines.comment(outer, KeyTable.standard().sectionComment(section));
    lines.open(section);
  }

  private void items(InputKey list) {
    for (InputKey key : KeyTable.standard().keys()) {
      if (key.section().equals(list.path() + "[]")) {
        lines.comment(
            list.section(), "- " + key.name() + ": " + key.comment() + " (" + facts(key) + ")");
      }
    }
  }

  private String facts(InputKey key) {
    List<String> facts = new ArrayList<>();
    if (key.kind().isNumeric()) {
      String or = key.or().isEmpty() ? "" : Shown.either(key.or()) + ", or ";
      key.refused()
          .ifPresent(range -> facts.add("allowed " + or + Shown.rangeIn(range, key, unitOf(key))));
      usual(key).ifPresent(facts::add);
    } else {
      facts.add(Shown.allowed(key, unit));
    }
    if (!key.required() && key.standard().isEmpty()) {
      facts.add("optional");
    }
    return String.join("; ", facts);
  }

  /** The usual range, of each finger where they differ. */
  private Optional<String> usual(InputKey key) {
    if (key.usualOf().isEmpty()) {
      return key.usual().map(range -> "usual " + Shown.rangeIn(range, key, unitOf(key)));
    }
    return Optional.of(
        "usual "
            + Stream.of(Digit.values())
                .map(d -> Shown.rangeIn(key.usualOf().get(d), key, unitOf(key)) + " " + d.key())
                .collect(Collectors.joining(", ")));
  }

  /** What was measured is written in the file's unit, what is chosen in mm. */
  private LengthUnit unitOf(InputKey key) {
    return key.standard().isPresent() || key.isOfItem() ? LengthUnit.MM : unit;
  }

  private String value(InputKey key) {
    if (key.path().equals("unit")) {
      return unit.symbol();
    }
    if (key.path().equals("making")) {
      return word(making);
    }
    Optional<String> standard =
        making == Making.HAND ? key.byHand().or(key::standard) : key.standard();
    if (key.kind() != ValueKind.LENGTH) {
      return key.example().or(() -> standard).orElse("");
    }
    if (key.example().isPresent()) {
      return LengthText.writeNearest(Double.parseDouble(key.example().get()), unit);
    }
    boolean bare = unit == LengthUnit.MM || key.or().stream().anyMatch(standard.orElse("")::equals);
    return standard.map(value -> bare ? value : value + " mm").orElse("");
  }
}
