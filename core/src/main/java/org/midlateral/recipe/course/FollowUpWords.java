package org.midlateral.recipe.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.ReadingError;
import org.midlateral.measurement.course.Course;
import org.midlateral.recipe.refit.Refit;

/**
 * What a course tells, in sentences for screens and sheets.
 *
 * @param told the course
 */
public record FollowUpWords(FollowUp told) {

  /** Which finger, how many visits, over which time. */
  public String head() {
    Course course = told.course();
    int visits = course.visits().size();
    return String.format(
        Locale.ROOT,
        "%s, %s hand, %s finger: %d visit%s, %s to %s, %d piece%s",
        course.order().measurements().reference(),
        course.order().measurements().hand().name().toLowerCase(Locale.ROOT),
        course.order().measurements().digit().key(),
        visits,
        visits == 1 ? "" : "s",
        course.first().time().shown(),
        course.last().time().shown(),
        course.piecesMade(course.lastNumber()),
        course.piecesMade(course.lastNumber()) == 1 ? "" : "s");
  }

  /** The verdict with its full stop. */
  public String verdict() {
    return told.verdict().words() + ".";
  }

  /** How the present piece sits, which angle it would hold, and when it gets loose. */
  public List<String> now() {
    List<String> lines = new ArrayList<>();
    for (Refit refit : told.refits()) {
      lines.add(
          refit.piece().replace('-', ' ') + ": " + refit.verdict().word() + ". " + refit.why());
    }
    if (lines.isEmpty()) {
      lines.add("How it sits is not known: the piece, or today's finger, cannot be made.");
    }
    if (!told.girths().isEmpty()) {
      lines.add(girths());
    }
    double madeFor = Math.toDegrees(told.present().measurements().pipExtensionDeficit());
    told.held().ifPresent(held -> lines.add(held.sentence(madeFor)));
    told.loose().ifPresent(loose -> lines.add(loose.sentence(told.course())));
    return lines;
  }

  /** Each girth against the one the piece was made by; a star where the change counts. */
  private String girths() {
    Lengths lengths = new Lengths(told.present().measurements().unit());
    return told.girths().stream()
        .map(
            girth ->
                girth.level().words()
                    + " "
                    + (girth.change() < 0 ? "" : "+")
                    + lengths.with(girth.change())
                    + (girth.grown() || girth.fallen() ? "*" : ""))
        .collect(Collectors.joining(", ", "Girths against what the piece was made for: ", "."));
  }

  /** What the next piece changes, or why there is none. */
  public List<String> next() {
    NextOrder next = told.next();
    if (!next.ok()) {
      return next.errors().stream().map(FollowUpWords::why).toList();
    }
    return next.changes().isEmpty()
        ? List.of("Nothing: made today it would be the same.")
        : next.changes().stream().map(NextOrder.KeyChange::shown).toList();
  }

  private static String why(InputError error) {
    return "None can be made of today's readings: " + error.key() + " " + error.text();
  }

  /** Which change counts, and where that comes from. */
  public List<String> counts() {
    ReadingError angle = ReadingError.GONIOMETER;
    ReadingError tape = ReadingError.TAPE;
    Lengths lengths = new Lengths(told.present().measurements().unit());
    return List.of(
        String.format(
            Locale.ROOT,
            "Angles: more than %.1f° between two readings (1.96 √2 times the standard error of %.1f°;"
                + " %s).",
            angle.smallestChange(),
            angle.standardError(),
            angle.source()),
        "Girths: more than "
            + lengths.with(tape.smallestChange())
            + (lengths.unit() == LengthUnit.IN
                ? String.format(Locale.ROOT, " (%.1f mm)", tape.smallestChange())
                : "")
            + " (in the same way, with a standard error of "
            + lengths.thin(tape.standardError())
            + "; "
            + tape.source()
            + "), and "
            + lengths.with(ReadingError.GIRTH_OVER_THE_DAY)
            + " more between morning and evening.",
        "The best of many readings is too good: of ten readings of an unchanged joint, the last"
            + " is that far from the best one time in seven. Read once more before you decide.");
  }

  /** A change of an angle with its sign; a star where it counts. */
  public static String change(OptionalDouble degrees) {
    if (degrees.isEmpty()) {
      return "";
    }
    boolean counts = ReadingError.GONIOMETER.tells(degrees.getAsDouble());
    String shown = String.format(Locale.ROOT, "%+.0f", degrees.getAsDouble());
    return (shown.matches("[+-]0") ? "0" : shown) + (counts ? "*" : "");
  }

  /** A number without idle digits; empty where there is none. */
  public static String shown(OptionalDouble number) {
    if (number.isEmpty()) {
      return "";
    }
    double value = number.getAsDouble();
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, "%.1f", value);
  }
}
