package org.midlateral.recipe.course;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.midlateral.document.drawing.PageFrame;
import org.midlateral.json.RecordJson;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.ReadingError;
import org.midlateral.recipe.Report;
import org.midlateral.recipe.refit.Refit;

/**
 * The report of a course. Angles in degrees, positive is lost; lengths in mm; days from the first
 * visit; null where nothing is known.
 *
 * @param smallestAngle change of an angle that counts
 * @param smallestGirth change of a girth that counts
 */
public record FollowUpReport(
    String reference,
    boolean ok,
    List<Report.ReportLine> findings,
    String verdict,
    List<ReasonLine> reasons,
    double smallestAngle,
    double smallestGirth,
    List<VisitFigures> visits,
    List<Refit> pieces,
    Double heldAt,
    LooseFigures loose,
    List<NextOrder.KeyChange> next,
    String caution) {

  /** A reason. */
  public record ReasonLine(String rule, String verdict, String text, String source) {}

  /** Figures of a visit. */
  public record VisitFigures(
      int visit,
      String when,
      int day,
      int piece,
      Double deficit,
      Double lostSinceFirst,
      Double lostSinceLast,
      Double flexion,
      Double flexionLostSinceFirst) {}

  /** When the present piece gets loose. */
  public record LooseFigures(
      String level, int day, int earliest, Integer latest, double perWeek, Double liner) {}

  /** The report of what a course tells. */
  public static FollowUpReport of(FollowUp told, List<Finding> findings) {
    double madeFor = Math.toDegrees(told.present().measurements().pipExtensionDeficit());
    return new FollowUpReport(
        told.course().order().measurements().reference(),
        true,
        findings.stream().map(Report.ReportLine::of).toList(),
        word(told.verdict()),
        told.reasons().stream()
            .map(
                r ->
                    new ReasonLine(
                        word(r.rule()), word(r.rule().verdict()), r.sentence(), r.rule().source()))
            .toList(),
        ReadingError.GONIOMETER.smallestChange(),
        ReadingError.TAPE.smallestChange(),
        told.lines().stream().map(FollowUpReport::figures).toList(),
        told.refits(),
        told.held().map(held -> madeFor + held.angle()).orElse(null),
        told.loose().map(FollowUpReport::figures).orElse(null),
        told.next().changes(),
        PageFrame.WARNING);
  }

  /** The report as it is written: JSON, ending with a line feed. */
  public String json() {
    return RecordJson.ROUNDED.text(this);
  }

  private static VisitFigures figures(VisitLine line) {
    return new VisitFigures(
        line.number(),
        line.visit().time().shown(),
        line.visit().time().day(),
        line.piece(),
        value(line.deficit()),
        value(line.sinceFirst()),
        value(line.sinceBefore()),
        value(line.flexion()),
        value(line.flexionSinceFirst()));
  }

  private static LooseFigures figures(LooseForecast loose) {
    return new LooseFigures(
        loose.level().key(),
        loose.day(),
        loose.earliest(),
        loose.latest().isPresent() ? (Integer) loose.latest().getAsInt() : null,
        loose.perWeek(),
        value(loose.bridge()));
  }

  private static Double value(OptionalDouble value) {
    return value.isPresent() ? (Double) value.getAsDouble() : null;
  }

  private static String word(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
