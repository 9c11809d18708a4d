package org.midlateral.measurement.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.course.Course;
import org.midlateral.measurement.course.MotionReading;
import org.midlateral.measurement.course.Visit;
import org.midlateral.measurement.entry.LengthText;

/**
 * Writes courses: a whole one, or one more visit at the end of a file that is there. Reading it
 * back gives an equal course.
 */
public final class CourseText {
  private final LengthUnit unit;

  /** The visit's keys by section; those of its own under the empty one. */
  private final Map<String, List<String>> keys = new LinkedHashMap<>();

  private CourseText(LengthUnit unit) {
    this.unit = unit;
  }

  /**
   * The file, without comments, in the unit the order was measured in.
   *
   * @return YAML
   */
  public static String write(Course course) {
    StringBuilder text = new StringBuilder(OrderText.write(course.order())).append("visits:\n");
    for (Visit visit : course.visits()) {
      text.append(new CourseText(course.order().measurements().unit()).visit(visit));
    }
    return text.toString();
  }

  /**
   * A file's text with one more visit.
   *
   * @param text of a course, its visits last and each in lines of its own
   * @param readings each {@code KEY=VALUE} with a visit's keys, as {@code pip-flexion.active=85}
   * @return the text; whether it can be read is for the reader to say
   */
  public static String with(String text, List<String> readings) {
    CourseText more = new CourseText(LengthUnit.MM);
    for (String reading : readings) {
      int equals = reading.indexOf('=');
      String key = reading.substring(0, equals).strip();
      String value = reading.substring(equals + 1).strip();
      more.put(key, key.equals("note") || key.equals("choices") ? quoted(value) : value);
    }
    return text + (text.endsWith("\n") ? "" : "\n") + more.lines();
  }

  /**
   * A measurement file's text with its first visit, which has the order's readings.
   *
   * @param text of the file
   * @param course of the order and that visit
   */
  public static String begun(String text, Course course) {
    LengthUnit unit = course.order().measurements().unit();
    return text
        + (text.endsWith("\n") ? "" : "\n")
        + "visits:\n"
        + new CourseText(unit).visit(course.first());
  }

  private String visit(Visit visit) {
    visit
        .time()
        .date()
        .ifPresentOrElse(
            date -> put("date", date.toString()), () -> put("day", "" + visit.time().day()));
    word("time", visit.time().part());
    motion("pip-extension-deficit", visit.deficit());
    motion("pip-flexion", visit.pipFlexion());
    motion("dip-flexion", visit.dipFlexion());
    visit
        .circumference()
        .forEach((level, girth) -> put("circumference." + level.key(), length(girth)));
    number("hours-worn", visit.hoursWorn());
    word("skin", visit.skin().skin());
    word("fingertip", visit.skin().tip());
    number("soreness", visit.skin().soreness());
    word("sore-at", visit.skin().at());
    number("closure.tension", visit.tension());
    visit.layers().ifPresent(layers -> put("closure.layers", "" + layers));
    number("gauge.force", visit.gauge().force());
    visit.gauge().distance().ifPresent(value -> put("gauge.distance", length(value)));
    visit.gauge().angle().ifPresent(value -> put("gauge.angle", OrderText.degrees(value)));
    word("piece", Optional.of(visit.piece().change()));
    if (!visit.piece().choices().isEmpty()) {
      put("choices", quoted(String.join("; ", visit.piece().choices())));
    }
    visit.note().ifPresent(note -> put("note", quoted(note)));
    return lines();
  }

  private static String quoted(String text) {
    return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  private String length(double millimetres) {
    return LengthText.write(millimetres, unit);
  }

  private void motion(String section, MotionReading reading) {
    number(section + ".active", reading.active());
    number(section + ".passive", reading.passive());
  }

  private void number(String key, OptionalDouble value) {
    value.ifPresent(number -> put(key, Double.toString(number)));
  }

  private void word(String key, Optional<? extends Enum<?>> word) {
    word.ifPresent(one -> put(key, one.name().toLowerCase(Locale.ROOT).replace('_', '-')));
  }

  private void put(String key, String value) {
    int dot = key.indexOf('.');
    String line = key.substring(dot + 1) + ": " + value;
    if (dot < 0) {
      keys.put(key, List.of(line));
    } else {
      keys.computeIfAbsent(key.substring(0, dot) + ".", k -> new ArrayList<>()).add(line);
    }
  }

  /** One item of a list. */
  private String lines() {
    return keys.entrySet().stream()
        .map(
            entry ->
                entry.getKey().endsWith(".")
                    ? entry.getKey().replace(".", ": {") + String.join(", ", entry.getValue()) + "}"
                    : entry.getValue().get(0))
        .collect(Collectors.joining("\n    ", "  - ", "\n"));
  }
}
