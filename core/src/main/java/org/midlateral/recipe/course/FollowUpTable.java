package org.midlateral.recipe.course;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.course.Visit;

/**
 * The visits of a course as a table for a spreadsheet: RFC 4180, UTF-8, degrees, lengths in the
 * user's unit.
 */
public final class FollowUpTable {
  private final FollowUp told;

  private FollowUpTable(FollowUp told) {
    this.told = told;
  }

  /** The file {@code follow-up.csv}. */
  public static String csv(FollowUp told) {
    StringWriter text = new StringWriter();
    try (CSVPrinter out = new CSVPrinter(text, CSVFormat.RFC4180)) {
      FollowUpTable table = new FollowUpTable(told);
      out.printRecord(table.head());
      for (VisitLine line : told.lines()) {
        out.printRecord(table.row(line));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private List<Level> levels() {
    return List.copyOf(told.course().order().measurements().circumference().keySet());
  }

  private LengthUnit unit() {
    return told.course().order().measurements().unit();
  }

  private List<String> head() {
    List<String> head =
        new ArrayList<>(
            List.of(
                "visit",
                "when",
                "time",
                "day",
                "piece",
                "piece work",
                "pip-extension-deficit active °",
                "pip-extension-deficit passive °",
                "lost since first °",
                "lost since last °",
                "pip-flexion active °",
                "pip-flexion passive °",
                "flexion lost since first °",
                "dip-flexion active °",
                "dip-flexion passive °"));
    levels().forEach(level -> head.add("circumference " + level.key() + " " + unit().symbol()));
    head.addAll(
        List.of(
            "hours-worn",
            "skin",
            "fingertip",
            "soreness",
            "sore-at",
            "closure tension N",
            "gauge force N",
            "gauge distance " + unit().symbol(),
            "note"));
    return head;
  }

  private List<String> row(VisitLine line) {
    Visit visit = line.visit();
    List<String> row = new ArrayList<>();
    row.add("" + line.number());
    row.add(visit.time().shown());
    row.add(word(visit.time().part()));
    row.add("" + visit.time().day());
    row.add("" + line.piece());
    row.add(word(Optional.of(visit.piece().change())));
    row.add(number(visit.deficit().active()));
    row.add(number(visit.deficit().passive()));
    row.add(number(line.sinceFirst()));
    row.add(number(line.sinceBefore()));
    row.add(number(visit.pipFlexion().active()));
    row.add(number(visit.pipFlexion().passive()));
    row.add(number(line.flexionSinceFirst()));
    row.add(number(visit.dipFlexion().active()));
    row.add(number(visit.dipFlexion().passive()));
    for (Level level : levels()) {
      Double girth = visit.circumference().get(level);
      row.add(girth == null ? "" : length(girth));
    }
    row.add(number(visit.hoursWorn()));
    row.add(word(visit.skin().skin()));
    row.add(word(visit.skin().tip()));
    row.add(number(visit.skin().soreness()));
    row.add(word(visit.skin().at()));
    row.add(number(visit.tension()));
    row.add(number(visit.gauge().force()));
    row.add(
        visit.gauge().distance().isPresent() ? length(visit.gauge().distance().getAsDouble()) : "");
    row.add(inert(visit.note().orElse("")));
    return row;
  }

  /** In the user's unit, to a thousandth of it. */
  private String length(double millimetres) {
    return plain(Math.rint(1000 * millimetres / unit().millimetres()) / 1000);
  }

  private static String number(OptionalDouble value) {
    return value.isPresent() ? plain(value.getAsDouble()) : "";
  }

  private static String plain(double value) {
    BigDecimal exact = BigDecimal.valueOf(value);
    return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
  }

  private static String word(Optional<? extends Enum<?>> word) {
    return word.map(one -> one.name().toLowerCase(Locale.ROOT).replace('_', '-')).orElse("");
  }

  /** A cell that a spreadsheet would take for a formula is given a space in front. */
  private static String inert(String cell) {
    return !cell.isEmpty() && "=+-@\t\r".indexOf(cell.charAt(0)) >= 0 ? " " + cell : cell;
  }
}
