package org.midlateral.viewer.weeks;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.List;
import javax.swing.JPanel;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Mark;
import org.midlateral.document.drawing.Mark.FilledArea;
import org.midlateral.document.drawing.Mark.LineStroke;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Mark.TextLabel;
import org.midlateral.recipe.course.FollowUp;
import org.midlateral.recipe.course.FollowUpDocument;

/** The charts of a course, in the colours of the window. */
final class ChartView extends JPanel {
  private static final long serialVersionUID = 1;

  /** Pixels of a millimetre, at which the charts' letters are as large as the window's. */
  private static final double SCALE = 4.4;

  /** Thinner lines would vanish (pixels). */
  private static final float LEAST = 0.8f;

  private transient FollowUp told;

  ChartView() {
    setName("weeks.charts");
    setPreferredSize(new Dimension(760, 700));
    String meaning = "Extension, flexion, hours worn and girths over the weeks";
    getAccessibleContext().setAccessibleName(meaning);
    setToolTipText(meaning);
  }

  void show(FollowUp other) {
    told = other;
    repaint();
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setColor(getBackground());
    g.fillRect(0, 0, getWidth(), getHeight());
    if (told != null) {
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      g.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
      double top = 0;
      for (Drawing drawing : charts()) {
        top += drawing.height();
        for (Mark mark : drawing.marks()) {
          paint(mark, top, g);
        }
      }
    }
    g.dispose();
  }

  private List<Drawing> charts() {
    return FollowUpDocument.charts(told, getWidth() / SCALE, getHeight() / SCALE);
  }

  private void paint(Mark mark, double bottom, Graphics2D g) {
    if (mark instanceof LineStroke stroke) {
      g.setColor(getForeground());
      g.setStroke(pen(stroke));
      g.draw(path(stroke.points(), bottom, stroke.closed()));
    } else if (mark instanceof FilledArea area) {
      g.setColor(between(area.grey()));
      g.fill(path(area.points(), bottom, true));
    } else {
      label((TextLabel) mark, bottom, g);
    }
  }

  private static BasicStroke pen(LineStroke stroke) {
    float width = Math.max(LEAST, (float) (SCALE * stroke.pen().weight()));
    List<Double> dashes = stroke.pen().dashes();
    if (dashes.isEmpty()) {
      return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }
    float[] lengths = new float[dashes.size()];
    for (int i = 0; i < lengths.length; i++) {
      lengths[i] = (float) (SCALE * dashes.get(i));
    }
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, lengths, 0);
  }

  private static Path2D path(List<PointMark> points, double bottom, boolean closed) {
    Path2D path = new Path2D.Double();
    for (int i = 0; i < points.size(); i++) {
      double x = SCALE * points.get(i).x();
      double y = SCALE * (bottom - points.get(i).y());
      if (i == 0) {
        path.moveTo(x, y);
      } else {
        path.lineTo(x, y);
      }
    }
    if (closed) {
      path.closePath();
    }
    return path;
  }

  /** Paper stands for white and ink for black. */
  private Color between(double grey) {
    float[] ink = getForeground().getRGBColorComponents(null);
    float[] paper = getBackground().getRGBColorComponents(null);
    float share = (float) grey;
    return new Color(
        ink[0] + share * (paper[0] - ink[0]),
        ink[1] + share * (paper[1] - ink[1]),
        ink[2] + share * (paper[2] - ink[2]));
  }

  private void label(TextLabel label, double bottom, Graphics2D g) {
    int style = label.bold() ? Font.BOLD : Font.PLAIN;
    // A type's size is the height of its line; capitals are 0.71 of it, here as in the pages.
    g.setFont(getFont().deriveFont(style, (float) (SCALE * label.size())));
    g.setColor(getForeground());
    double width = g.getFontMetrics().stringWidth(label.text());
    double back =
        switch (label.anchor()) {
          case START -> 0;
          case MIDDLE -> width / 2;
          case END -> width;
        };
    AffineTransform before = g.getTransform();
    g.translate(SCALE * label.at().x(), SCALE * (bottom - label.at().y()));
    g.rotate(-Math.toRadians(label.turn()));
    g.drawString(label.text(), (float) -back, 0);
    g.setTransform(before);
  }
}
