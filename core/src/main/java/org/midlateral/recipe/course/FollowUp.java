package org.midlateral.recipe.course;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.course.Course;
import org.midlateral.measurement.file.CourseOrders;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.refit.Refit;

/**
 * What a course tells.
 *
 * @param course itself
 * @param present order of the present piece
 * @param lines its visits, by time
 * @param verdict what it comes to
 * @param reasons the most serious first
 * @param girths now against those the present piece was made by
 * @param refits how the present pieces sit on today's finger; none where that cannot be told
 * @param held angle the present piece would hold; empty where it would not be worn, or none is
 *     known
 * @param loose when it gets loose; empty where no girth falls
 * @param next the order for the next piece
 */
public record FollowUp(
    Course course,
    Order present,
    List<VisitLine> lines,
    CourseVerdict verdict,
    List<CourseReason> reasons,
    List<GirthChange> girths,
    List<Refit> refits,
    Optional<HeldToday> held,
    Optional<LooseForecast> loose,
    NextOrder next) {

  public FollowUp {
    lines = List.copyOf(lines);
    reasons = List.copyOf(reasons);
    girths = List.copyOf(girths);
    refits = List.copyOf(refits);
  }

  /**
   * One reason of the verdict.
   *
   * @param rule that holds
   * @param sentence what it says here
   */
  public record CourseReason(CourseRule rule, String sentence) {}

  /** Reads a course, the joint model and all. */
  public static FollowUp of(Course course) {
    FollowUp judged = judged(course);
    boolean worn = judged.reasons().stream().noneMatch(r -> r.rule() == CourseRule.EXTENSION_LOST);
    Orders.Result today = CourseOrders.at(course, course.lastNumber());
    return worn && today.ok() ? judged.with(HeldToday.of(judged.present(), today.order())) : judged;
  }

  /** The same without the joint model, on which the verdict does not rest. */
  static FollowUp judged(Course course) {
    Order present = CourseOrders.present(course);
    List<Refit> refits = refits(course, present);
    CourseState state = CourseState.of(course, present, refits);
    List<CourseReason> reasons =
        Arrays.stream(CourseRule.values())
            .filter(rule -> rule.holds(state))
            .map(rule -> new CourseReason(rule, rule.sentence(state)))
            .sorted(
                Comparator.comparing((CourseReason reason) -> reason.rule().verdict()).reversed())
            .toList();
    return new FollowUp(
        course,
        present,
        VisitLine.of(course),
        reasons.get(0).rule().verdict(),
        reasons,
        state.girths(),
        refits,
        Optional.empty(),
        LooseForecast.of(course, present),
        NextOrder.of(course));
  }

  private FollowUp with(Optional<HeldToday> angle) {
    return new FollowUp(
        course, present, lines, verdict, reasons, girths, refits, angle, loose, next);
  }

  private static List<Refit> refits(Course course, Order present) {
    Orders.Result today = CourseOrders.at(course, course.lastNumber());
    if (!today.ok()) {
      return List.of();
    }
    try {
      Measurements now = today.order().measurements();
      return Refit.of(
          Orthosis.make(present),
          course.madeByTheSameKind()
              ? now
              : now.withPipExtensionDeficit(present.measurements().pipExtensionDeficit()));
    } catch (DesignRefused refused) {
      return List.of();
    }
  }
}
