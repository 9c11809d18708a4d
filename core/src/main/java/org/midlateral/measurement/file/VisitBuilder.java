package org.midlateral.measurement.file;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.midlateral.measurement.HoldingDesign.GaugeReading;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.course.MotionReading;
import org.midlateral.measurement.course.PieceWork;
import org.midlateral.measurement.course.PieceWork.PieceChange;
import org.midlateral.measurement.course.SkinReading;
import org.midlateral.measurement.course.SkinReading.SkinState;
import org.midlateral.measurement.course.SkinReading.SorePlace;
import org.midlateral.measurement.course.SkinReading.TipState;
import org.midlateral.measurement.course.Visit;
import org.midlateral.measurement.course.VisitTime;
import org.midlateral.measurement.course.VisitTime.DayPart;
import org.midlateral.measurement.entry.Entry.Place;
import org.midlateral.measurement.entry.Setting;

/** Makes one visit from checked settings, and checks its values against each other. */
final class VisitBuilder {
  private final Map<String, Setting> settings;
  private final String path;
  private final Place place;
  private final List<InputError> errors = new ArrayList<>();

  /**
   * A visit of a file.
   *
   * @param settings of all visits
   * @param path as {@code visits[2]}
   * @param place where it stands
   */
  VisitBuilder(Map<String, Setting> settings, String path, Place place) {
    this.settings = settings;
    this.path = path;
    this.place = place;
  }

  /** What cannot stand together; known once the date was asked for and the visit was made. */
  List<InputError> errors() {
    return errors;
  }

  /** The date; empty where none is stated, or one that is in no calendar. */
  Optional<LocalDate> date() {
    Optional<Setting> stated = given("date");
    try {
      return stated.map(setting -> LocalDate.parse(setting.word()));
    } catch (DateTimeException e) {
      Setting wrong = stated.orElseThrow();
      String allowed = "a day of the calendar, as 2026-03-31";
      String text = wrong.word() + " is no day of the calendar; allowed: " + allowed;
      errors.add(wrong.place().error(path + ".date", wrong.word(), allowed, text));
      return Optional.empty();
    }
  }

  /** The day that is stated in place of a date. */
  OptionalInt day() {
    return whole("day");
  }

  Optional<DayPart> part() {
    return word("time", DayPart.class);
  }

  /** The visit. */
  Visit visit(VisitTime time) {
    MotionReading deficit = motion("pip-extension-deficit");
    MotionReading flexion = motion("pip-flexion");
    byHandAtLeast(deficit, flexion);
    GaugeReading gauge =
        new GaugeReading(number("gauge.force"), number("gauge.distance"), radians("gauge.angle"));
    gaugeWhole();
    return new Visit(
        time,
        deficit,
        flexion,
        motion("dip-flexion"),
        girths(),
        number("hours-worn"),
        new SkinReading(
            word("skin", SkinState.class),
            word("fingertip", TipState.class),
            number("soreness"),
            word("sore-at", SorePlace.class)),
        number("closure.tension"),
        whole("closure.layers"),
        gauge,
        new PieceWork(word("piece", PieceChange.class).orElse(PieceChange.SAME), choices()),
        given("note").map(Setting::word));
  }

  /** A joint does not bend less than it is short of extension. */
  private void byHandAtLeast(MotionReading deficit, MotionReading flexion) {
    OptionalDouble straight = deficit.reached();
    OptionalDouble bent = flexion.reached();
    if (straight.isPresent() && bent.isPresent() && bent.getAsDouble() < straight.getAsDouble()) {
      String key = flexion.passive().isPresent() ? "pip-flexion.passive" : "pip-flexion.active";
      Setting setting = given(key).orElseThrow();
      String allowed = "no less than the extension deficit";
      String text =
          String.format(
              Locale.ROOT,
              "%s is less than the extension deficit of %.0f°; allowed: %s",
              setting.written(),
              straight.getAsDouble(),
              allowed);
      errors.add(setting.place().error(path + "." + key, setting.written(), allowed, text));
    }
  }

  private void gaugeWhole() {
    for (String key : List.of("gauge.force", "gauge.distance", "gauge.angle")) {
      for (String needed : List.of("gauge.force", "gauge.distance")) {
        if (given(key).isPresent() && given(needed).isEmpty()) {
          Setting setting = given(key).orElseThrow();
          String allowed = "a reading with both gauge.force and gauge.distance";
          String text = setting.written() + " is given without " + needed + "; allowed: " + allowed;
          errors.add(setting.place().error(path + "." + key, setting.written(), allowed, text));
        }
      }
    }
  }

  /** The choices that were changed for a new piece; each is tried later, on the order. */
  private List<String> choices() {
    Optional<Setting> stated = given("choices");
    if (stated.isEmpty()) {
      return List.of();
    }
    Setting setting = stated.get();
    if (word("piece", PieceChange.class).orElse(PieceChange.SAME) != PieceChange.NEW) {
      String allowed = "choices only with piece: new";
      String text = setting.word() + " is given, but no new piece is made; allowed: " + allowed;
      errors.add(setting.place().error(path + ".choices", setting.word(), allowed, text));
    }
    return Stream.of(setting.word().split(";")).map(String::strip).toList();
  }

  private Map<Level, Double> girths() {
    Map<Level, Double> girths = new EnumMap<>(Level.class);
    for (Level level : Level.values()) {
      number("circumference." + level.key()).ifPresent(girth -> girths.put(level, girth));
    }
    return girths;
  }

  private MotionReading motion(String section) {
    return new MotionReading(number(section + ".active"), number(section + ".passive"));
  }

  private Optional<Setting> given(String key) {
    return Optional.ofNullable(settings.get(path + "." + key));
  }

  private OptionalDouble number(String key) {
    Optional<Setting> setting = given(key);
    return setting.isPresent() ? OptionalDouble.of(setting.get().number()) : OptionalDouble.empty();
  }

  private OptionalDouble radians(String key) {
    OptionalDouble degrees = number(key);
    return degrees.isPresent() ? OptionalDouble.of(Math.toRadians(degrees.getAsDouble())) : degrees;
  }

  private OptionalInt whole(String key) {
    OptionalDouble number = number(key);
    return number.isPresent() ? OptionalInt.of((int) number.getAsDouble()) : OptionalInt.empty();
  }

  private <E extends Enum<E>> Optional<E> word(String key, Class<E> type) {
    return given(key)
        .map(s -> Enum.valueOf(type, s.word().toUpperCase(Locale.ROOT).replace('-', '_')));
  }

  /** An error about the visit itself. */
  InputError wrong(String key, String allowed, String text) {
    return given(key)
        .map(s -> s.place().error(path + "." + key, s.written(), allowed, text))
        .orElseGet(() -> place.error(path + "." + key, "", allowed, text));
  }
}
