package org.midlateral.measurement.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.course.Course;
import org.midlateral.measurement.course.DatedReading;
import org.midlateral.measurement.course.Visit;
import org.midlateral.measurement.entry.LengthText;

/**
 * The orders of a course's later pieces: the first order with what was read last, and with the
 * choices that were changed since. A width is taken to follow the girth at its level.
 */
public final class CourseOrders {
  private static final Set<String> MEASURED =
      Set.of(
          "reference",
          "note",
          "hand",
          "digit",
          "unit",
          "circumference",
          "length",
          "width",
          "angle",
          "axis",
          "station");

  private final Course course;
  private final Map<String, String> overrides = new LinkedHashMap<>();

  private CourseOrders(Course course) {
    this.course = course;
  }

  /**
   * The order of a piece that is made at a visit.
   *
   * @param visit its number, from 0
   * @return the order, or why there is none
   */
  public static Orders.Result at(Course course, int visit) {
    CourseOrders orders = new CourseOrders(course);
    course.visits().subList(0, visit + 1).forEach(orders::read);
    List<DatedReading> deficits = course.deficits(visit);
    if (!deficits.isEmpty()) {
      // A piece holds no joint past straight.
      double deficit = Math.max(0, deficits.get(deficits.size() - 1).value());
      orders.number("angle.pip-extension-deficit", deficit);
    }
    List<String> all =
        orders.overrides.entrySet().stream().map(e -> e.getKey() + "=" + e.getValue()).toList();
    return Orders.parse(OrderText.write(course.order()), "the order", all);
  }

  /** The order of the present piece. */
  public static Order present(Course course) {
    boolean first = course.visits().stream().noneMatch(visit -> visit.piece().isNew());
    return first ? course.order() : at(course, course.presentPiece()).order();
  }

  /** Whether a key of a measurement file is measured, and not chosen. */
  static boolean isMeasured(String key) {
    return MEASURED.contains(key.split("\\.", 2)[0]);
  }

  private void read(Visit visit) {
    Measurements first = course.order().measurements();
    for (String choice : visit.piece().choices()) {
      int equals = choice.indexOf('=');
      overrides.put(choice.substring(0, equals).strip(), choice.substring(equals + 1).strip());
    }
    visit.circumference().forEach((level, girth) -> girth(first, level, girth));
    visit.tension().ifPresent(tension -> number("closure.tension", tension));
    visit.layers().ifPresent(layers -> overrides.put("closure.layers", "" + layers));
    if (visit.gauge().force().isPresent()) {
      number("joint.gauge.force", visit.gauge().force().getAsDouble());
      length("joint.gauge.distance", visit.gauge().distance().getAsDouble());
      gaugeAngle(visit);
    }
  }

  /**
   * At the extension limit where none is told; an earlier reading's angle is none of this one's.
   */
  private void gaugeAngle(Visit visit) {
    overrides.remove("joint.gauge.angle");
    OptionalDouble angle = visit.gauge().angle();
    boolean earlier = course.order().design().holding().joint().gauge().angle().isPresent();
    if (angle.isPresent()) {
      number("joint.gauge.angle", Math.rint(Math.toDegrees(angle.getAsDouble()) * 1e9) / 1e9);
    } else if (earlier && visit.deficit().reached().isPresent()) {
      number("joint.gauge.angle", Math.max(0, visit.deficit().reached().getAsDouble()));
    }
  }

  private void girth(Measurements first, Level level, double girth) {
    length("circumference." + level.key(), girth);
    Double width = first.width().get(level);
    Double asMade = first.circumference().get(level);
    if (width != null && asMade != null) {
      double rounded = Math.rint(10 * width * girth / asMade) / 10;
      overrides.put("width." + level.key(), girth == asMade ? text(width) : rounded + " mm");
    }
  }

  private void number(String key, double value) {
    overrides.put(key, Double.toString(value));
  }

  private void length(String key, double millimetres) {
    overrides.put(key, text(millimetres));
  }

  private String text(double millimetres) {
    return LengthText.write(millimetres, course.order().measurements().unit());
  }
}
