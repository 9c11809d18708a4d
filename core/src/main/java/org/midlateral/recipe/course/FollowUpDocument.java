package org.midlateral.recipe.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.midlateral.document.bench.BenchDocuments;
import org.midlateral.document.drawing.Column.ColumnRow;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.PageFrame;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.document.followup.FollowUpPages;
import org.midlateral.document.followup.FollowUpPages.FollowUpSection;
import org.midlateral.document.followup.TimeChart;
import org.midlateral.document.followup.TimeChart.ChartLine;
import org.midlateral.document.followup.TimeChart.ChartRoom;
import org.midlateral.document.followup.TimeChart.PieceMark;
import org.midlateral.document.followup.TimeChart.RoomSpan;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.ReadingError;
import org.midlateral.measurement.course.Course;
import org.midlateral.measurement.course.DatedReading;
import org.midlateral.measurement.course.PieceWork.PieceChange;
import org.midlateral.measurement.course.Visit;
import org.midlateral.measurement.file.CourseOrders;
import org.midlateral.recipe.refit.Refit;

/** Draws the pages of a course. */
public final class FollowUpDocument {
  private static final double Z = 1.96;
  private static final double FULL_NIGHT = 8;

  /** Rows of visits on a page. */
  private static final int MOST = 40;

  private static final List<Double> HEIGHTS = List.of(5.5, 4.5, 3.0, 4.5);

  private final FollowUp told;
  private final Course course;
  private final FollowUpWords words;

  private FollowUpDocument(FollowUp told) {
    this.told = told;
    this.course = told.course();
    this.words = new FollowUpWords(told);
  }

  /** The file {@code follow-up.pdf}. */
  public static byte[] pdf(FollowUp told) {
    Order order = told.course().order();
    PageFrame frame =
        BenchDocuments.frame(order, PaperSize.usualWith(order.measurements().unit()), "Follow-up");
    return new FollowUpDocument(told).pages().pdf(frame);
  }

  /** Its charts, together as high as asked for (mm). */
  public static List<Drawing> charts(FollowUp told, double width, double height) {
    return new FollowUpDocument(told).pages().drawings(width, height);
  }

  private FollowUpPages pages() {
    List<String> reasons = told.reasons().stream().map(FollowUp.CourseReason::sentence).toList();
    List<String> counts = new ArrayList<>(words.counts());
    told.reasons()
        .forEach(
            reason ->
                counts.add(
                    "Rule \""
                        + reason.rule().name().toLowerCase(Locale.ROOT).replace('_', ' ')
                        + "\": "
                        + reason.rule().source()
                        + "."));
    return new FollowUpPages(
        words.verdict(),
        reasons,
        List.of(extension(), flexion(), hours(), girths()),
        HEIGHTS,
        table(),
        List.of(0.03, 0.11, 0.10, 0.06, 0.10, 0.10, 0.11, 0.06, 0.09, 0.06, 0.06, 0.12),
        List.of(
            new FollowUpSection("The present piece on today's finger", words.now()),
            new FollowUpSection("The next piece: what changes", words.next()),
            new FollowUpSection("What counts as a change", counts)));
  }

  private int days() {
    return course.last().time().day() - course.first().time().day();
  }

  private double day(Visit visit) {
    return visit.time().day() - course.first().time().day();
  }

  private ChartLine line(String label, double off, Function<Visit, OptionalDouble> read) {
    List<PointMark> points = new ArrayList<>();
    for (DatedReading reading : course.readings(course.lastNumber(), read)) {
      double day = reading.time().day() - course.first().time().day();
      points.add(new PointMark(day, reading.value()));
    }
    return new ChartLine(label, points, off);
  }

  private TimeChart chart(
      String title,
      List<ChartLine> lines,
      Optional<ChartRoom> room,
      boolean downward,
      double least,
      double most) {
    return new TimeChart(title, lines, room, pieces(), days(), downward, least, most);
  }

  private TimeChart extension() {
    double off = Z * ReadingError.GONIOMETER.standardError();
    return chart(
        "PIP joint short of extension, degrees (0 is straight; grey: what one reading may be off)",
        List.of(
            line("passive", off, visit -> visit.deficit().passive()),
            line("active", 0, visit -> visit.deficit().active())),
        Optional.empty(),
        true,
        0,
        20);
  }

  private TimeChart flexion() {
    double off = Z * ReadingError.GONIOMETER.standardError();
    return chart(
        "PIP joint's flexion, degrees",
        List.of(
            line("passive", off, visit -> visit.pipFlexion().passive()),
            line("active", 0, visit -> visit.pipFlexion().active())),
        Optional.empty(),
        false,
        80,
        90);
  }

  private TimeChart hours() {
    return chart(
        "Worn, hours a night",
        List.of(line("hours", 0, Visit::hoursWorn)),
        Optional.empty(),
        false,
        0,
        FULL_NIGHT);
  }

  /** Each level's girth against what the first piece was made by. */
  private TimeChart girths() {
    LengthUnit unit = course.order().measurements().unit();
    Map<Level, Double> first = course.order().measurements().circumference();
    List<ChartLine> lines = new ArrayList<>();
    for (Level level :
        List.of(Level.PIP, Level.PROXIMAL_PHALANX, Level.MIDDLE_PHALANX, Level.DIP)) {
      if (!first.containsKey(level) || course.girths(course.lastNumber(), level).isEmpty()) {
        continue;
      }
      lines.add(
          line(
              level.words(),
              0,
              visit -> {
                Double girth = visit.circumference().get(level);
                return girth == null
                    ? OptionalDouble.empty()
                    : OptionalDouble.of((girth - first.get(level)) / unit.millimetres());
              }));
    }
    return chart(
        "Girth against the first piece's, "
            + (unit == LengthUnit.IN ? "decimal inches" : unit.symbol())
            + " (grey: the piece's room at the PIP joint, from loose to touching)",
        lines,
        Optional.of(new ChartRoom("", rooms(unit))),
        false,
        -2 / unit.millimetres(),
        2 / unit.millimetres());
  }

  /** From where a piece gets loose about the PIP joint to where the skin touches it. */
  private List<RoomSpan> rooms(LengthUnit unit) {
    double first = course.order().measurements().circumference().get(Level.PIP);
    List<RoomSpan> spans = new ArrayList<>();
    Order worn = course.order();
    double from = 0;
    for (int i = 0; i < course.visits().size(); i++) {
      if (course.visits().get(i).piece().isNew()) {
        spans.add(room(worn, from, day(course.visits().get(i)), first, unit));
        worn = CourseOrders.at(course, i).order();
        from = day(course.visits().get(i));
      }
    }
    spans.add(room(worn, from, Math.max(1, days()), first, unit));
    return spans;
  }

  private static RoomSpan room(Order worn, double from, double to, double first, LengthUnit unit) {
    double made = worn.measurements().circumference().get(Level.PIP) - first;
    double touching = made + 2 * Math.PI * worn.design().trough().clearance();
    double loose = made - 2 * Math.PI * Refit.LOOSE;
    return new RoomSpan(from, to, loose / unit.millimetres(), touching / unit.millimetres());
  }

  private List<PieceMark> pieces() {
    List<PieceMark> marks = new ArrayList<>();
    marks.add(new PieceMark(0, "piece 1"));
    for (int i = 0; i < course.visits().size(); i++) {
      Visit visit = course.visits().get(i);
      if (visit.piece().change() != PieceChange.SAME) {
        String label = visit.piece().isNew() ? "piece " + course.piecesMade(i) : "adjusted";
        marks.add(new PieceMark(day(visit), label));
      }
    }
    return marks;
  }

  private List<ColumnRow> table() {
    Measurements measured = course.order().measurements();
    Lengths lengths = new Lengths(measured.unit());
    List<ColumnRow> rows = new ArrayList<>();
    rows.add(
        ColumnRow.of(
            "",
            "visit",
            "short: act.",
            "pass.",
            "since first",
            "since last",
            "flexion: act.",
            "pass.",
            "PIP " + measured.unit().symbol(),
            "hours",
            "sore",
            "piece"));
    for (VisitLine line : shown()) {
      Visit visit = line.visit();
      Double girth = visit.circumference().get(Level.PIP);
      rows.add(
          ColumnRow.of(
              "" + line.number(),
              visit.time().shown(),
              FollowUpWords.shown(visit.deficit().active()),
              FollowUpWords.shown(visit.deficit().passive()),
              FollowUpWords.change(line.sinceFirst()),
              FollowUpWords.change(line.sinceBefore()),
              FollowUpWords.shown(visit.pipFlexion().active()),
              FollowUpWords.shown(visit.pipFlexion().passive()),
              girth == null ? "" : lengths.text(girth),
              FollowUpWords.shown(visit.hoursWorn()),
              FollowUpWords.shown(visit.skin().soreness()),
              worn(line)));
    }
    return rows;
  }

  /** As many as a page takes: the first and the last; all stand in the table for a spreadsheet. */
  private List<VisitLine> shown() {
    List<VisitLine> all = told.lines();
    List<VisitLine> shown =
        new ArrayList<>(all.subList(Math.max(0, all.size() - MOST), all.size()));
    shown.set(0, all.get(0));
    return shown;
  }

  private static String worn(VisitLine line) {
    return switch (line.visit().piece().change()) {
      case SAME -> "" + line.piece();
      case ADJUSTED -> line.piece() + ", adjusted";
      case NEW -> line.piece() + ", new";
    };
  }
}
