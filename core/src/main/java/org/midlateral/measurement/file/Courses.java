package org.midlateral.measurement.file;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.course.Course;
import org.midlateral.measurement.course.Visit;
import org.midlateral.measurement.course.VisitTime;
import org.midlateral.measurement.entry.Entry;
import org.midlateral.measurement.entry.Entry.Place;
import org.midlateral.measurement.entry.EntryReader;
import org.midlateral.measurement.entry.FileText;
import org.midlateral.measurement.entry.Setting;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.measurement.privacy.PersonalData;

/** Reads courses: measurement files with {@code visits} under them. */
public final class Courses {
  /** Dates farther apart are no one course (days). */
  private static final long LONGEST = 3650;

  /**
   * What came of reading one: a course with perhaps some cautions, or errors.
   *
   * @param course what was read; null where it was refused
   * @param errors all that is wrong; empty where there is a course
   * @param cautions values that are allowed and unusual
   */
  public record CourseRead(Course course, List<InputError> errors, List<Finding> cautions) {
    public CourseRead {
      errors = List.copyOf(errors);
      cautions = List.copyOf(cautions);
    }

    /** Whether there is a course. */
    public boolean ok() {
      return course != null;
    }
  }

  private final String file;
  private final List<InputError> errors = new ArrayList<>();
  private final List<Finding> cautions = new ArrayList<>();

  private Courses(String file) {
    this.file = file;
  }

  /**
   * Reads a file.
   *
   * @param file YAML 1.2 or JSON, UTF-8, at most 1 MiB
   * @return the course, or every error at once; nothing is thrown for a bad file
   */
  public static CourseRead read(Path file) {
    try {
      return parse(FileText.read(file), file.toString());
    } catch (FileText.Unreadable e) {
      return new CourseRead(null, List.of(e.error()), List.of());
    }
  }

  /**
   * Reads a text.
   *
   * @param text YAML 1.2 or JSON
   * @param fileName as messages name it
   * @return the course, or every error at once
   */
  public static CourseRead parse(String text, String fileName) {
    return new Courses(fileName).of(EntryReader.read(text, fileName, ""));
  }

  private CourseRead of(EntryReader.Reading reading) {
    List<Entry> visits = reading.entries().stream().filter(Courses::isOfVisits).toList();
    List<Entry> others = reading.entries().stream().filter(entry -> !isOfVisits(entry)).toList();
    Orders.Result order =
        Orders.of(
            new EntryReader.Reading(others, reading.errors(), reading.complete()), file, List.of());
    errors.addAll(order.errors());
    cautions.addAll(order.cautions());
    if (visits.isEmpty() && reading.complete()) {
      String allowed = "a list of 1 to 60 visits, each with a date";
      String text = "is missing; allowed: " + allowed;
      errors.add(new Place(file, 0).error("visits", "", allowed, text));
    }
    Optional<LengthUnit> unit = EntryCheck.unitOf(others);
    EntryCheck.CheckedEntries checked =
        EntryCheck.check(visits, file, false, KeyTable.visits(), unit);
    errors.addAll(checked.errors());
    caution(checked);
    List<Visit> read = visits(checked.settings(), visits);
    Course course = errors.isEmpty() && !read.isEmpty() ? new Course(order.order(), read) : null;
    if (course != null) {
      CourseCheck check = new CourseCheck(course, read, checked.settings());
      errors.addAll(check.errors());
      cautions.addAll(check.cautions());
    }
    errors.sort(Comparator.comparingInt(InputError::line));
    return errors.isEmpty()
        ? new CourseRead(course, List.of(), cautions)
        : new CourseRead(null, errors, List.of());
  }

  private static boolean isOfVisits(Entry entry) {
    return entry.path().equals("visits") || entry.path().startsWith("visits[");
  }

  private void caution(EntryCheck.CheckedEntries checked) {
    checked.settings().entrySet().stream()
        .sorted(Comparator.comparingInt(entry -> entry.getValue().place().line()))
        .forEach(
            entry -> {
              Setting setting = entry.getValue();
              Orders.unusual(entry.getKey(), setting, checked.unit(), Optional.empty())
                  .ifPresent(cautions::add);
              if (setting.key().name().equals("note")) {
                PersonalData.caution(entry.getKey(), setting).ifPresent(cautions::add);
              }
            });
  }

  private List<Visit> visits(Map<String, Setting> settings, List<Entry> entries) {
    Map<String, Place> places = new HashMap<>();
    entries.forEach(entry -> places.put(entry.path(), entry.place()));
    int items = settings.containsKey("visits") ? (int) settings.get("visits").number() : 0;
    List<VisitBuilder> builders = new ArrayList<>();
    for (int i = 0; i < items; i++) {
      String path = "visits[" + i + "]";
      builders.add(new VisitBuilder(settings, path, places.getOrDefault(path, new Place(file, 0))));
    }
    List<Optional<LocalDate>> dates = builders.stream().map(VisitBuilder::date).toList();
    boolean known = stated(builders, dates, places.keySet());
    List<VisitTime> times = times(builders, dates);
    known &= !known || once(builders, times);
    List<Visit> visits = new ArrayList<>();
    for (int i = 0; i < items; i++) {
      visits.add(builders.get(i).visit(times.get(i)));
      errors.addAll(builders.get(i).errors());
    }
    return known ? visits : List.of();
  }

  /** Counts days from the earliest date. */
  private static List<VisitTime> times(
      List<VisitBuilder> builders, List<Optional<LocalDate>> dates) {
    LocalDate first =
        dates.stream().flatMap(Optional::stream).min(Comparator.naturalOrder()).orElse(null);
    List<VisitTime> times = new ArrayList<>();
    for (int i = 0; i < builders.size(); i++) {
      long day =
          dates.get(i).map(date -> ChronoUnit.DAYS.between(first, date)).orElse(0L)
              + builders.get(i).day().orElse(0);
      int counted = (int) Math.min(day, LONGEST + 1);
      times.add(new VisitTime(counted, dates.get(i), builders.get(i).part()));
    }
    return times;
  }

  /** Whether each visit has a date, or each has a day. */
  private boolean stated(
      List<VisitBuilder> builders, List<Optional<LocalDate>> dates, Set<String> written) {
    boolean dated = dates.stream().anyMatch(Optional::isPresent);
    int before = errors.size();
    boolean refused = false;
    for (int i = 0; i < builders.size(); i++) {
      VisitBuilder builder = builders.get(i);
      String path = "visits[" + i + "].";
      boolean there = written.contains(path + "date") || written.contains(path + "day");
      refused |= there && dates.get(i).isEmpty() && builder.day().isEmpty();
      boolean day = builder.day().isPresent();
      if (dated && day) {
        String allowed = "a date at every visit, or a day at every visit";
        errors.add(builder.wrong("day", allowed, "is mixed with dates; allowed: " + allowed));
      } else if (!there) {
        String allowed = "a date as 2026-03-31, or in its place a day from the first visit";
        errors.add(builder.wrong("date", allowed, "is missing; allowed: " + allowed));
      }
    }
    return errors.size() == before && !refused;
  }

  /** Whether no two visits are at one time, and none is years after the first. */
  private boolean once(List<VisitBuilder> builders, List<VisitTime> times) {
    Map<String, Integer> seen = new HashMap<>();
    int before = errors.size();
    for (int i = 0; i < times.size(); i++) {
      VisitTime time = times.get(i);
      String key = time.date().isPresent() ? "date" : "day";
      Integer other = seen.putIfAbsent(time.day() + " " + time.part(), i);
      if (time.day() > LONGEST) {
        String allowed = "ten years from the first visit at most";
        errors.add(builders.get(i).wrong(key, allowed, "is too late; allowed: " + allowed));
      } else if (other != null) {
        String allowed = "one visit a day, or one in the morning and one in the evening (time)";
        String text = time.shown() + " is that of visits[" + other + "] too; allowed: " + allowed;
        errors.add(builders.get(i).wrong(key, allowed, text));
      }
    }
    return errors.size() == before;
  }
}
