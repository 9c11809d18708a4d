package org.midlateral.measurement.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.midlateral.measurement.Caution;
import org.midlateral.measurement.Digit;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.entry.LengthText;
import org.midlateral.measurement.entry.YamlLines;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.measurement.key.Shown;
import org.midlateral.measurement.key.ValueKind;

/** A commented measurement file to start from, with every key of the table. */
public final class Template {

  private final LengthUnit unit;
  private final YamlLines lines = new YamlLines();

  private Template(LengthUnit unit) {
    this.unit = unit;
  }

  /**
   * The file; its measurements are an invented example.
   *
   * @param unit the measurements are written in; choices of the design stay in mm
   * @return YAML that can be read as it stands
   */
  public static String text(LengthUnit unit) {
    return new Template(unit).text();
  }

  private String text() {
    lines.comment("", "Measurements of one finger, and what is chosen for its orthosis.");
    lines.comment("", "The measurements below are an invented example: replace them by your own.");
    lines.comment("", "No person's name belongs in this file.");
    Caution.all().stream()
        .filter(caution -> caution.code().equals("estimate"))
        .forEach(caution -> lines.comment("", caution.text()));
    for (InputKey key : KeyTable.standard().keys()) {
      if (!key.isOfItem()) {
        key(key);
      }
    }
    return lines.text();
  }

  private void key(InputKey key) {
    openSections(key.section());
    lines.comment(key.section(), key.comment());
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
    if (key.kind() != ValueKind.LENGTH) {
      return key.example().or(key::standard).orElse("");
    }
    if (key.example().isPresent()) {
      return LengthText.writeNearest(Double.parseDouble(key.example().get()), unit);
    }
    boolean bare =
        unit == LengthUnit.MM || key.or().stream().anyMatch(key.standard().orElse("")::equals);
    return key.standard().map(value -> bare ? value : value + " mm").orElse("");
  }
}
