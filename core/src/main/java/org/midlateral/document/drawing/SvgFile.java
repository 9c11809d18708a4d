package org.midlateral.document.drawing;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Mark.FilledArea;
import org.midlateral.document.drawing.Mark.LineStroke;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Mark.TextLabel;

/** Writes a drawing or a page as SVG 1.1: size in mm, viewBox in mm. */
public final class SvgFile {
  private final double width;
  private final double height;
  private final StringBuilder out = new StringBuilder();

  private SvgFile(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /**
   * The file of a drawing.
   *
   * @param drawing to write
   * @param title of it, in English
   * @return UTF-8
   */
  public static byte[] bytes(Drawing drawing, String title) {
    SvgFile file = new SvgFile(drawing.width(), drawing.height());
    file.open(title);
    file.marks(drawing.marks(), "");
    return file.close();
  }

  /**
   * The file of a page, as large as its paper.
   *
   * @param page to write
   * @param title of it, in English
   * @return UTF-8
   */
  public static byte[] bytes(Page page, String title) {
    SvgFile file = new SvgFile(page.paper().width(), page.paper().height());
    file.open(title);
    int windows = 0;
    for (Page.Block block : page.blocks()) {
      Drawing placed = block.drawing().moved(page.left() + block.x(), page.bottom() + block.y());
      if (block.window().isEmpty()) {
        file.marks(placed.marks(), "");
      } else {
        String window = "window-" + ++windows;
        file.window(window, block.window().get(), page);
        file.marks(placed.marks(), " clip-path=\"url(#" + window + ")\"");
      }
    }
    return file.close();
  }

  private void open(String title) {
    String wide = Numbers.text(width);
    String high = Numbers.text(height);
    out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" xml:lang=\"en\"");
    out.append(" width=\"" + wide + "mm\" height=\"" + high + "mm\"");
    out.append(" viewBox=\"0 0 " + wide + " " + high + "\">\n");
    out.append("<title>").append(escaped(title)).append("</title>\n");
  }

  private byte[] close() {
    out.append("</svg>\n");
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** The part of a page that a block may be drawn on. */
  private void window(String name, Page.PageWindow window, Page page) {
    double top = height - page.bottom() - window.y() - window.height();
    out.append("<clipPath id=\"" + name + "\"><rect");
    out.append(" x=\"" + Numbers.text(page.left() + window.x()) + "\"");
    out.append(" y=\"" + Numbers.text(top) + "\"");
    out.append(" width=\"" + Numbers.text(window.width()) + "\"");
    out.append(" height=\"" + Numbers.text(window.height()) + "\"/></clipPath>\n");
  }

  private void marks(List<Mark> marks, String clip) {
    out.append("<g fill=\"none\" stroke=\"#000\" stroke-linejoin=\"round\"" + clip + ">\n");
    for (Mark mark : marks) {
      if (mark instanceof LineStroke stroke) {
        stroke(stroke);
      } else if (mark instanceof FilledArea area) {
        area(area);
      }
    }
    out.append("</g>\n<g stroke=\"none\" font-family=\"Roboto, Helvetica, Arial, sans-serif\"");
    out.append(clip + ">\n");
    for (Mark mark : marks) {
      if (mark instanceof TextLabel label) {
        label(label);
      }
    }
    out.append("</g>\n");
  }

  private void stroke(LineStroke stroke) {
    out.append("<path class=\"" + stroke.pen().name().toLowerCase(Locale.ROOT) + "\"");
    out.append(" stroke-width=\"" + Numbers.text(stroke.pen().weight()) + "\"");
    if (!stroke.pen().dashes().isEmpty()) {
      String dashes =
          stroke.pen().dashes().stream().map(Numbers::text).collect(Collectors.joining(" "));
      out.append(" stroke-dasharray=\"" + dashes + "\"");
    }
    out.append(" d=\"" + path(stroke.points()) + (stroke.closed() ? "Z" : "") + "\"/>\n");
  }

  private void area(FilledArea area) {
    long grey = Math.round(255 * area.grey());
    out.append("<path stroke=\"none\" fill=\"rgb(" + grey + "," + grey + "," + grey + ")\"");
    out.append(" d=\"" + path(area.points()) + "Z\"/>\n");
  }

  private void label(TextLabel label) {
    String anchor =
        label.anchor() == Anchor.START ? "start" : label.anchor() == Anchor.END ? "end" : "middle";
    String place = place(label.at(), " ");
    out.append("<text font-size=\"" + Numbers.text(label.size()) + "\"");
    out.append(" text-anchor=\"" + anchor + "\"" + (label.bold() ? " font-weight=\"bold\"" : ""));
    // As wide as it was laid out to be, where another typeface stands in.
    double wide = Typeface.of(label.bold()).width(label.text(), label.size());
    out.append(" textLength=\"" + Numbers.text(wide) + "\" lengthAdjust=\"spacingAndGlyphs\"");
    out.append(" transform=\"translate(" + place + ")");
    out.append(label.turn() == 0 ? "" : " rotate(" + Numbers.text(-label.turn()) + ")");
    out.append("\">").append(escaped(label.text())).append("</text>\n");
  }

  private String path(List<PointMark> points) {
    StringBuilder path = new StringBuilder();
    for (PointMark point : points) {
      path.append(path.isEmpty() ? "M" : "L").append(place(point, " "));
    }
    return path.toString();
  }

  private String place(PointMark point, String between) {
    return Numbers.text(point.x()) + between + Numbers.text(height - point.y());
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
