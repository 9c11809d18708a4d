package org.midlateral.viewer.lesson;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.midlateral.mechanics.Loop;
import org.midlateral.mechanics.ThreePoint;
import org.midlateral.mechanics.joint.JointAnswer.AngleSplit;
import org.midlateral.viewer.colour.ColourMap;
import org.midlateral.viewer.colour.Scale;
import org.midlateral.viewer.drawing.Palette;
import org.midlateral.viewer.lesson.LoadedSection.SectionOutline;
import org.midlateral.viewer.lesson.Reasons.WrapReason;

/** Draws one of the lesson's reasons, as large as there is room. */
final class ReasonPainter {
  private final Graphics2D g;
  private final Palette palette;
  private final int width;
  private final int height;
  private final FontMetrics font;

  /** At the left and right, and from line to line (px). */
  private final double margin;

  private final int line;

  ReasonPainter(Graphics2D g, Palette palette, int width, int height) {
    this.g = g;
    this.palette = palette;
    this.width = width;
    this.height = height;
    font = g.getFontMetrics();
    line = font.getHeight();
    margin = 3.0 * line;
  }

  /**
   * Draws it.
   *
   * @param share of the curves that have appeared, 0 to 1
   */
  void draw(Step.Reason reason, Reasons reasons, double share) {
    switch (reason) {
      case SECTIONS -> sections(reasons.wraps());
      case RIMS -> rims(reasons, share);
      case CURVES -> curves(reasons, share);
      case RING -> ring(reasons);
      case JOINT -> joint(reasons);
    }
  }

  /** The four sections side by side to one scale, each with its neutral axis. */
  private void sections(List<WrapReason> wraps) {
    double column = (width - 2.0 * margin) / wraps.size();
    double widest = wraps.stream().mapToDouble(ReasonPainter::widest).max().orElse(1);
    double deepest = wraps.stream().mapToDouble(w -> w.reach(1) + w.reach(-1)).max().orElse(1);
    double below = 5.2 * line;
    double room = height - below - 4.5 * line;
    double scale = Math.min(0.78 * column / widest, room / deepest);
    double floor = height - below - (room - deepest * scale) / 2;
    for (int i = 0; i < wraps.size(); i++) {
      WrapReason wrap = wraps.get(i);
      double middle = margin + column * (i + 0.5);
      double axis = floor - wrap.reach(-1) * scale;
      section(wrap, middle, axis, scale, wraps.get(wraps.size() - 1).reach(1));
      float[] dashes = {6, 4};
      g.setStroke(
          new BasicStroke(1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0));
      g.setColor(palette.axis());
      g.draw(new Line2D.Double(middle - column * 0.45, axis, middle + column * 0.45, axis));
      g.setStroke(new BasicStroke(1));
      double y = floor + line;
      g.setColor(palette.ink());
      bold(wrap.title(), middle, y);
      y += line;
      centred(say("%.1f mm over, %.1f under it", wrap.reach(1), wrap.reach(-1)), middle, y);
      centred("EI " + Scale.text(wrap.bending()) + " N·mm²", middle, y + line);
    }
    g.setColor(palette.axis());
    head("Dashed: the neutral axis. The lighter the material, the more it counts.");
  }

  /** The sections before the load, pale, and under it, to one exaggeration. */
  private void rims(Reasons reasons, double share) {
    List<WrapReason> wraps = reasons.wraps();
    double column = (width - 2.0 * margin) / wraps.size();
    double times = reasons.exaggeration();
    double widest = wraps.stream().mapToDouble(ReasonPainter::widest).max().orElse(1);
    double back = reasons.back();
    double deepest =
        wraps.stream()
            .mapToDouble(w -> w.reach(-1) + Math.max(w.reach(1), back - w.moments().n()))
            .max()
            .orElse(1);
    double below = 5.2 * line;
    double room = height - below - 5.5 * line;
    double scale = Math.min(0.74 * column / widest, room / deepest);
    double floor = height - below - (room - deepest * scale) / 2;
    for (int i = 0; i < wraps.size(); i++) {
      WrapReason wrap = wraps.get(i);
      double middle = margin + column * (i + 0.5);
      double axis = floor - (wrap.reach(-1) - wrap.moments().n()) * scale;
      wrap.section()
          .ifPresent(
              section -> {
                loaded(section.outlines(), share * times, middle, axis, scale);
                StrapPainter strap = new StrapPainter(g, palette, middle, axis, scale);
                strap.draw(section.exaggerated(share * times), reasons.skin(), share * wrap.pull());
              });
      g.setColor(palette.ink());
      bold(wrap.title(), middle, floor + line);
      centred(wrap.section().isEmpty() ? "not computed" : rims(wrap), middle, floor + 2.0 * line);
    }
    g.setColor(palette.ink());
    head(
        "Grey: before the load. Over it: under the load, every change of shape drawn \u00d7 "
            + Scale.text(times)
            + ", the bottom held still. Line: the strap, with its pull on each rim.");
  }

  private void loaded(
      List<SectionOutline> outlines, double times, double middle, double axis, double scale) {
    for (SectionOutline line : outlines) {
      Path2D before = outline(List.of(line.before()), middle, axis, scale);
      g.setColor(Color.decode(palette.dark() ? "#4a545a" : "#d3d0c6"));
      g.fill(before);
      g.setColor(palette.quiet());
      g.draw(before);
    }
    for (SectionOutline line : outlines) {
      Path2D under = outline(List.of(line.exaggerated(times)), middle, axis, scale);
      g.setColor(line.dorsal() ? palette.shell() : palette.trough());
      g.fill(under);
      g.setColor(palette.ink());
      g.draw(under);
    }
  }

  private static Path2D outline(List<Loop> loops, double middle, double axis, double scale) {
    Path2D outline = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    for (Loop loop : loops) {
      for (int i = 0; i < loop.size(); i++) {
        double x = middle + loop.y(i) * scale;
        double y = axis - loop.n(i) * scale;
        if (i == 0) {
          outline.moveTo(x, y);
        } else {
          outline.lineTo(x, y);
        }
      }
      outline.closePath();
    }
    return outline;
  }

  private static String rims(WrapReason wrap) {
    return wrap.rims()
        .map(
            opening ->
                (opening < 0 ? "rims close by " : "rims open by ")
                    + say("%.2g mm", Math.abs(opening)))
        .orElse("no free rims");
  }

  private static double widest(WrapReason wrap) {
    double most = 0;
    for (Loop loop : wrap.loops()) {
      for (int i = 0; i < loop.size(); i++) {
        most = Math.max(most, 2 * Math.abs(loop.y(i)));
      }
    }
    return most;
  }

  /** Filled in rows, the lighter the farther from the axis: there the material counts most. */
  private void section(WrapReason wrap, double middle, double axis, double scale, double most) {
    Path2D outline = outline(wrap.loops(), middle, axis + wrap.moments().n() * scale, scale);
    Graphics2D inside = (Graphics2D) g.create();
    inside.clip(outline);
    Rectangle2D box = outline.getBounds2D();
    for (int y = (int) box.getMinY(); y <= box.getMaxY(); y++) {
      double far = Math.abs(y + 0.5 - axis) / scale / most;
      inside.setColor(new Color(ColourMap.VIRIDIS.colour(far * far)));
      inside.fill(new Rectangle2D.Double(box.getX(), y, box.getWidth(), 1));
    }
    inside.dispose();
    g.setColor(palette.ink());
    g.draw(outline);
  }

  /** EI along the finger, a line a wrap, on a scale of powers of ten. */
  private void curves(Reasons reasons, double share) {
    Rectangle2D plot =
        new Rectangle2D.Double(2.2 * margin, 4.2 * line, width - 6.0 * margin, height - 7.7 * line);
    double low = Double.MAX_VALUE;
    double high = 0;
    double from = Double.MAX_VALUE;
    double to = -Double.MAX_VALUE;
    for (WrapReason wrap : reasons.wraps()) {
      for (int i = 0; i < wrap.stations().size(); i++) {
        if (wrap.bendings().get(i) > 0) {
          low = Math.min(low, wrap.bendings().get(i));
          high = Math.max(high, wrap.bendings().get(i));
        }
        from = Math.min(from, wrap.stations().get(i));
        to = Math.max(to, wrap.stations().get(i));
      }
    }
    double least = Math.floor(Math.log10(low));
    double most = Math.ceil(Math.log10(high));
    axes(plot, least, most);
    mark(plot, "web", -from / (to - from));
    mark(plot, "PIP", (reasons.support().pip() - from) / (to - from));
    int shown = (int) Math.ceil(share * reasons.wraps().size() - 1e-9);
    for (int k = 0; k < Math.max(1, shown); k++) {
      WrapReason wrap = reasons.wraps().get(k);
      Path2D line = new Path2D.Double();
      double x = 0;
      double y = 0;
      for (int i = 0; i < wrap.stations().size(); i++) {
        double bending = Math.max(wrap.bendings().get(i), Math.pow(10, least));
        x = plot.getX() + plot.getWidth() * (wrap.stations().get(i) - from) / (to - from);
        y = plot.getMaxY() - plot.getHeight() * (Math.log10(bending) - least) / (most - least);
        if (i == 0) {
          line.moveTo(x, y);
        } else {
          line.lineTo(x, y);
        }
      }
      g.setColor(new Color(ColourMap.VIRIDIS.colour(palette.dark() ? 0.4 + 0.18 * k : 0.24 * k)));
      g.setStroke(new BasicStroke(3));
      g.draw(line);
      g.setStroke(new BasicStroke(1));
      g.setColor(palette.ink());
      double beside = plot.getMaxY() - plot.getHeight() * (level(wrap) - least) / (most - least);
      g.drawString(
          wrap.title(), (float) plot.getMaxX() + 8, (float) beside + font.getAscent() / 3f);
    }
  }

  private static double level(WrapReason wrap) {
    List<Double> sorted = wrap.bendings().stream().sorted().toList();
    return Math.log10(sorted.get(sorted.size() / 2));
  }

  private void axes(Rectangle2D plot, double least, double most) {
    for (double ten = least; ten <= most; ten++) {
      double y = plot.getMaxY() - plot.getHeight() * (ten - least) / (most - least);
      g.setColor(Color.decode(palette.dark() ? "#3a4449" : "#dcd9cf"));
      g.draw(new Line2D.Double(plot.getX(), y, plot.getMaxX(), y));
      g.setColor(palette.ink());
      String text = Scale.text(Math.pow(10, ten));
      g.drawString(text, (float) plot.getX() - 8 - font.stringWidth(text), (float) y + 4);
    }
    g.setColor(palette.quiet());
    g.draw(new Line2D.Double(plot.getX(), plot.getMaxY(), plot.getMaxX(), plot.getMaxY()));
    g.setColor(palette.ink());
    head("EI along the finger, N·mm²; each line is ten times the one under it");
  }

  private void mark(Rectangle2D plot, String name, double share) {
    double x = plot.getX() + share * plot.getWidth();
    g.setColor(palette.quiet());
    g.draw(new Line2D.Double(x, plot.getY(), x, plot.getMaxY()));
    centred(name, x, plot.getMaxY() + 1.3 * line);
  }

  /**
   * A bar.
   *
   * @param name what it tells
   * @param value its length
   * @param text beside it
   */
  private record Bar(String name, double value, String text) {}

  private void ring(Reasons reasons) {
    if (reasons.ring().isEmpty()) {
      g.setColor(palette.ink());
      head("This design has no dorsal shell to close it.");
      return;
    }
    Reasons.RingReason ring = reasons.ring().get();
    bars(
        "EI at the PIP joint of this design's own pieces, N·mm²",
        List.of(
            bar("Trough alone", ring.trough(), ring.trough()),
            bar("Ring that slips", ring.slipping(), ring.trough()),
            bar("Ring that is bonded", ring.bonded(), ring.trough())));
  }

  private static String ratio(double times) {
    return times == 1 ? "" : ", " + Scale.text(times) + " times the trough";
  }

  private static Bar bar(String name, double value, double of) {
    return new Bar(name, value, Scale.text(value) + ratio(value / of));
  }

  private void joint(Reasons reasons) {
    List<Bar> bars = new ArrayList<>();
    if (reasons.split().isPresent()) {
      AngleSplit split = reasons.split().get();
      bars.add(part("Clearance and liner", split.play()));
      bars.add(part("Skin", split.skin()));
      bars.add(part("Closure", split.closure()));
      bars.add(part("Plastic", split.plastic()));
      bars("What this design loses of the angle, in degrees, and where", bars);
    } else {
      g.setColor(palette.ink());
      head("How the joint is held has no answer for this design.");
    }
    ThreePoint support = reasons.support();
    g.setColor(palette.ink());
    String arms =
        say(
            "%.0f N·mm over arms of %.0f and %.0f mm: %.1f N + %.1f N at the ends = %.1f N at the"
                + " closure. Arms twice as long would halve all three.",
            support.moment(),
            support.proximalArm(),
            support.distalArm(),
            support.proximalForce(),
            support.distalForce(),
            support.pipForce());
    g.drawString(arms, (float) margin, height - 1.2f * line);
  }

  private static Bar part(String name, double degrees) {
    return new Bar(name, Math.max(0, degrees), say("%.2f°", degrees));
  }

  private void bars(String head, List<Bar> bars) {
    g.setColor(palette.ink());
    head(head);
    double most = bars.stream().mapToDouble(Bar::value).max().orElse(1);
    double names = bars.stream().mapToDouble(b -> font.stringWidth(b.name())).max().orElse(0);
    double texts = bars.stream().mapToDouble(b -> font.stringWidth(b.text())).max().orElse(0);
    double left = margin + names + 16;
    double room = Math.max(40, width - left - texts - 2 * margin);
    double row = Math.min(6.0 * line, (height - 7.0 * line) / bars.size());
    double y = 4.0 * line;
    for (Bar bar : bars) {
      Rectangle2D box =
          new Rectangle2D.Double(left, y, most > 0 ? room * bar.value() / most : 0, 0.6 * row);
      g.setColor(palette.trough());
      g.fill(box);
      g.setColor(palette.ink());
      float base = (float) (box.getCenterY() + font.getAscent() / 2.5);
      g.drawString(bar.name(), (float) margin, base);
      g.drawString(bar.text(), (float) box.getMaxX() + 10, base);
      y += row;
    }
  }

  private void head(String text) {
    g.drawString(text, (float) margin, 2.8f * line);
  }

  private void bold(String text, double x, double y) {
    Font plain = g.getFont();
    g.setFont(plain.deriveFont(Font.BOLD));
    centred(text, x, y);
    g.setFont(plain);
  }

  private void centred(String text, double x, double y) {
    double w = g.getFontMetrics().stringWidth(text);
    g.drawString(text, (float) (x - w / 2), (float) y);
  }

  private static String say(String form, Object... values) {
    return String.format(Locale.ROOT, form, values);
  }
}
