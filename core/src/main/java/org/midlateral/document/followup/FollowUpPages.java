package org.midlateral.document.followup;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.midlateral.document.drawing.Column;
import org.midlateral.document.drawing.Column.ColumnRow;
import org.midlateral.document.drawing.Drawing;
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
 * @param sections under the table
 */
public record FollowUpPages(
    String verdict,
    List<String> reasons,
    List<TimeChart> charts,
    List<Double> heights,
    List<ColumnRow> table,
    List<Double> shares,
    List<FollowUpSection> sections) {

  /**
   * Sentences under a heading; none without a sentence.
   *
   * @param heading above them
   * @param lines a sentence or two each
   */
  public record FollowUpSection(String heading, List<String> lines) {
    public FollowUpSection {
      lines = List.copyOf(lines);
    }

    private Column under(Column column) {
      if (!lines.isEmpty()) {
        column.gap(1).heading(heading);
        lines.forEach(line -> column.item("•", line));
      }
      return column;
    }
  }

  /** Room that a figure leaves below it (mm). */
  private static final double BETWEEN = 2;

  private static final String STAR =
      "Degrees; + is lost, and a star means more than two readings of an unchanged joint differ by.";

  /** The charts, then the table with what follows from it: two pages, more where much is told. */
  public byte[] pdf(PageFrame frame) {
    return PdfFile.bytes(pages(frame), "Follow-up");
  }

  /** The charts, together as high as asked for (mm). */
  public List<Drawing> drawings(double width, double height) {
    double scale = height / heights.stream().mapToDouble(Double::doubleValue).sum();
    return IntStream.range(0, charts.size())
        .mapToObj(i -> charts.get(i).drawing(width, scale * heights.get(i)))
        .toList();
  }

  List<Page> pages(PageFrame frame) {
    Column first = top(frame);
    first.heading(verdict);
    reasons.forEach(reason -> first.item("•", reason));
    first.gap(1);
    double room = first.top() - frame.bottom() - BETWEEN * charts.size();
    List<Drawing> drawings = drawings(PaperSize.USED_WIDTH, room);
    for (int i = 0; i < charts.size(); i++) {
      first.figure(described(charts.get(i)), drawings.get(i));
    }
    List<List<Block>> pages = new ArrayList<>(List.of(first.blocks()));
    Column column = top(frame).heading("Visits").table(shares, table);
    column.paragraph(STAR);
    for (FollowUpSection section : sections) {
      double height = -section.under(new Column(0, 0, PaperSize.USED_WIDTH)).top();
      if (column.top() - height < frame.bottom()) {
        pages.add(column.blocks());
        column = top(frame);
      }
      section.under(column);
    }
    pages.add(column.blocks());
    return frame.around(pages);
  }

  private static Column top(PageFrame frame) {
    return new Column(0, frame.top() - 1, PaperSize.USED_WIDTH);
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
