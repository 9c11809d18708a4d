package org.midlateral.measurement.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.ReadingError;
import org.midlateral.measurement.course.Course;
import org.midlateral.measurement.course.Visit;
import org.midlateral.measurement.entry.Setting;

/** Checks the visits of a course against the order and against each other. */
final class CourseCheck {
  /** A girth further than this from the order's is taken for a mix-up, as between neighbours. */
  private static final double REFUSED_RATIO = 1.6;

  /** A step between two visits that calls for another reading; common practice, no source. */
  private static final double UNUSUAL_STEP = 1.15;

  private final Course course;
  private final List<Visit> asWritten;
  private final Map<String, Setting> settings;
  private final List<InputError> errors = new ArrayList<>();
  private final List<Finding> cautions = new ArrayList<>();

  /**
   * Checks them.
   *
   * @param asWritten its visits in the order of the file
   * @param settings of the visits
   */
  CourseCheck(Course course, List<Visit> asWritten, Map<String, Setting> settings) {
    this.course = course;
    this.asWritten = asWritten;
    this.settings = settings;
    Map<Level, Double> before = course.order().measurements().circumference();
    for (int i = 0; i < course.visits().size(); i++) {
      Visit visit = course.visits().get(i);
      girths(visit, before);
      strength(visit);
      piece(visit, i);
    }
  }

  /** What cannot stand. */
  List<InputError> errors() {
    return errors;
  }

  /** What is unusual. */
  List<Finding> cautions() {
    return cautions;
  }

  private String path(Visit visit) {
    return "visits[" + asWritten.indexOf(visit) + "]";
  }

  private void girths(Visit visit, Map<Level, Double> first) {
    visit
        .circumference()
        .forEach(
            (level, girth) -> {
              Double asMade = first.get(level);
              if (asMade == null) {
                return;
              }
              double ratio = Math.max(girth, asMade) / Math.min(girth, asMade);
              String path = path(visit) + ".circumference." + level.key();
              Setting setting = settings.get(path);
              String beside = setting.written() + " beside the order's circumference there";
              if (ratio > REFUSED_RATIO) {
                String allowed =
                    "circumferences of one finger within " + REFUSED_RATIO + " of each other";
                String text = beside + " looks like a mix-up; allowed: " + allowed;
                errors.add(setting.place().error(path, setting.written(), allowed, text));
              } else if (ratio > UNUSUAL_STEP) {
                String text = path + ": " + beside + " is an unusual difference; measure again.";
                cautions.add(Finding.caution("unusual-step", path, text, ratio, UNUSUAL_STEP));
              }
            });
  }

  /** Nobody straightens a joint farther by strength than a hand does. */
  private void strength(Visit visit) {
    OptionalDouble active = visit.deficit().active();
    OptionalDouble passive = visit.deficit().passive();
    if (active.isEmpty() || passive.isEmpty()) {
      return;
    }
    double farther = passive.getAsDouble() - active.getAsDouble();
    if (farther > 0 && ReadingError.GONIOMETER.tells(farther)) {
      String path = path(visit) + ".pip-extension-deficit";
      String text =
          String.format(
              Locale.ROOT,
              "%s: %.0f° active beside %.0f° passive: the joint goes straighter by its own"
                  + " strength than by hand. Were the two readings swapped?",
              path,
              active.getAsDouble(),
              passive.getAsDouble());
      double limit = ReadingError.GONIOMETER.smallestChange();
      cautions.add(Finding.caution("active-beyond-passive", path, text, farther, limit));
    }
  }

  /** A new piece must come of an order that stands. */
  private void piece(Visit visit, int number) {
    if (!visit.piece().isNew()) {
      return;
    }
    Setting setting = settings.get(path(visit) + ".piece");
    for (String choice : visit.piece().choices()) {
      String key = choice.substring(0, choice.indexOf('=')).strip();
      if (CourseOrders.isMeasured(key)) {
        String path = path(visit) + ".choices";
        String allowed = "keys of the design; readings belong to the visit itself";
        String text = key + " is a reading, not a choice; allowed: " + allowed;
        errors.add(settings.get(path).place().error(path, choice, allowed, text));
        return;
      }
    }
    for (InputError wrong : CourseOrders.at(course, number).errors()) {
      String text = "no new piece can be made of this visit: " + wrong.key() + " " + wrong.text();
      errors.add(
          setting.place().error(path(visit) + ".piece", wrong.value(), wrong.allowed(), text));
    }
  }
}
