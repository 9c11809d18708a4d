package org.midlateral.document.followup;

import java.util.ArrayList;
import java.util.List;
import org.midlateral.document.drawing.Column;
import org.midlateral.document.drawing.Column.ColumnRow;
import org.midlateral.document.drawing.Page;
import org.midlateral.document.drawing.Page.Block;
import org.midlateral.document.drawing.PageFrame;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.document.drawing.PdfFile;

/**
 * What the pages of a course say.
 *
 * @param verdict in a few words
 * @param reasons sentences, the most serious first
 * @param charts from above to below
 * @param heights of the charts, to each other
 * @param table of the visits, its head first
 * @param shares widths of the table's columns
 * @param now how the present piece sits, and when it will not
 * @param next what the next piece changes
 * @param counts which change counts, and by what
 */
public record FollowUpPages(
    String verdict,
    List<String> reasons,
    List<TimeChart> charts,
    List<Double> heights,
    List<ColumnRow> table,
    List<Double> shares,
    List<String> now,
    List<String> next,
    List<String> counts) {

  /** Room that a figure leaves below it (mm). */
  private static final double BETWEEN = 2;

  private static final String STAR =
      "Degrees; + is lost, and a star means more than two readings of an unchanged joint differ by.";

  /** Two pages: the charts, and the table with what follows from it. */
  public byte[] pdf(PageFrame frame) {
    return PdfFile.bytes(pages(frame), "Follow-up");
  }

  List<Page> pages(PageFrame frame) {
    Column first = new Column(0, frame.top() - 1, PaperSize.USED_WIDTH);
    first.heading(verdict);
    reasons.forEach(reason -> first.item("•", reason));
    first.gap(1);
    double room = first.top() - frame.bottom() - BETWEEN * charts.size();
    double scale = room / heights.stream().mapToDouble(Double::doubleValue).sum();
    for (int i = 0; i < charts.size(); i++) {
      TimeChart chart = charts.get(i);
      double height = scale * heights.get(i);
      first.figure(described(chart), chart.drawing(PaperSize.USED_WIDTH, height));
    }
    Column second = new Column(0, frame.top() - 1, PaperSize.USED_WIDTH);
    second.heading("Visits").table(shares, table);
    second.paragraph(STAR);
    section(second, "The present piece on today's finger", now);
    section(second, "The next piece: what changes", next);
    section(second, "What counts as a change", counts);
    List<List<Block>> pages = new ArrayList<>(List.of(first.blocks(), second.blocks()));
    return frame.around(pages);
  }

  private static void section(Column column, String heading, List<String> lines) {
    if (!lines.isEmpty()) {
      column.gap(1).heading(heading);
      lines.forEach(line -> column.item("•", line));
    }
  }

  /** For who hears the page read: the title and each line's first and last reading. */
  private static String described(TimeChart chart) {
    StringBuilder text = new StringBuilder(chart.title()).append('.');
    for (TimeChart.ChartLine line : chart.lines()) {
      if (!line.points().isEmpty()) {
        double from = line.points().get(0).y();
        double to = line.points().get(line.points().size() - 1).y();
        text.append(' ').append(line.label()).append(": from ").append(from).append(" to ");
        text.append(to).append('.');
      }
    }
    return text.toString();
  }
}
