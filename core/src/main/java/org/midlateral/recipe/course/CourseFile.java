package org.midlateral.recipe.course;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.midlateral.document.FileProblem;
import org.midlateral.document.WholeFile;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.course.Course;
import org.midlateral.measurement.course.Visit;
import org.midlateral.measurement.course.VisitTime;
import org.midlateral.measurement.entry.Entry.Place;
import org.midlateral.measurement.entry.FileText;
import org.midlateral.measurement.file.CourseText;
import org.midlateral.measurement.file.Courses;
import org.midlateral.measurement.file.Orders;
import org.midlateral.measurement.key.KeyTable;

/**
 * A course on the disk. It is begun and added to at its end, so that every line of it, comments
 * included, stays as it was; what would not be read back as it was meant is not written.
 *
 * @param path of the file
 */
public record CourseFile(Path path) {
  private static final Place ADD = new Place("--add", 0);

  /** Reads it. */
  public Courses.CourseRead read() {
    return Courses.read(path);
  }

  /**
   * Writes a new one from an order's file.
   *
   * @param order its file
   * @param on date of the first visit; empty to count days
   * @return the course, or what is wrong: with the order, or with a file that is there already
   * @throws FileProblem where it cannot be written
   */
  public Courses.CourseRead begin(Path order, Optional<LocalDate> on) {
    if (Files.exists(path)) {
      String allowed = "the name of a file that is not there yet";
      String text = "exists already and is not replaced; allowed: " + allowed;
      InputError error = new Place(path.toString(), 0).error("", "", allowed, text);
      return new Courses.CourseRead(null, List.of(error), List.of());
    }
    Orders.Result read = Orders.read(order, List.of());
    if (!read.ok()) {
      return new Courses.CourseRead(null, read.errors(), List.of());
    }
    VisitTime time = new VisitTime(0, on, Optional.empty());
    Visit first = Visit.first(read.order().measurements(), time);
    Course course = new Course(read.order(), List.of(first));
    String begun = CourseText.write(course);
    try {
      String kept = CourseText.begun(FileText.read(order), course);
      begun = Courses.parse(kept, path.toString()).ok() ? kept : begun;
    } catch (FileText.Unreadable e) {
      return new Courses.CourseRead(null, List.of(e.error()), List.of());
    }
    return saved(begun, false);
  }

  /**
   * Adds a visit.
   *
   * @param readings each {@code KEY=VALUE}
   * @return the course with it, or what is wrong; then the file is as it was
   * @throws FileProblem where it cannot be written; then the file is as it was
   */
  public Courses.CourseRead add(List<String> readings) {
    Courses.CourseRead before = read();
    if (!before.ok()) {
      return before;
    }
    Optional<InputError> wrong = wrong(readings);
    if (wrong.isPresent()) {
      return new Courses.CourseRead(null, List.of(wrong.get()), List.of());
    }
    String text;
    try {
      text = CourseText.with(FileText.read(path), readings);
    } catch (FileText.Unreadable e) {
      return new Courses.CourseRead(null, List.of(e.error()), List.of());
    }
    Courses.CourseRead after = Courses.parse(text, path + " with --add");
    if (!after.ok()) {
      return after;
    }
    boolean kept =
        after.course().order().equals(before.course().order())
            && after.course().visits().size() == before.course().visits().size() + 1
            && after.course().visits().containsAll(before.course().visits());
    if (!kept) {
      String allowed = "visits as the last section, each beginning with a dash";
      String said = "cannot be added to " + path + ": write it there by hand; allowed: " + allowed;
      InputError error = ADD.error("", "", allowed, said);
      return new Courses.CourseRead(null, List.of(error), List.of());
    }
    return saved(text, true);
  }

  private Courses.CourseRead saved(String text, boolean force) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    WholeFile.makeFolderOf(path);
    WholeFile.write(path, out -> out.write(bytes), force);
    return read();
  }

  private static Optional<InputError> wrong(List<String> readings) {
    Set<String> keys = new HashSet<>();
    for (String reading : readings) {
      int equals = reading.indexOf('=');
      String key = reading.substring(0, Math.max(0, equals)).strip();
      String allowed = "KEY=VALUE with a visit's key, each once, as pip-flexion.active=85";
      boolean known = equals > 0 && KeyTable.visits().find("visits[0]." + key).isPresent();
      if (!known || !keys.add(key) || reading.matches(".*\\p{Cntrl}.*")) {
        String near =
            KeyTable.visits()
                .nearest("visits[0]." + key)
                .map(path -> "; did you mean " + path.replaceFirst("visits\\[[0-9]*]\\.", "") + "?")
                .orElse("");
        String what = known ? "is not allowed" : "is no visit's key" + near;
        return Optional.of(ADD.error(key, reading, allowed, what + "; allowed: " + allowed));
      }
    }
    return Optional.empty();
  }
}
