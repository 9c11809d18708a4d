package org.midlateral.viewer.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JPanel;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.measurement.Hand;
import org.midlateral.mechanics.Loop;
import org.midlateral.mechanics.SectionPlane;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.section.CrossSection;
import org.midlateral.viewer.section.GapLine;
import org.midlateral.viewer.section.SkinPressure;

/** The section at one station, drawn flat, seen from the tip. */
public final class SectionDrawing extends JPanel {
  private static final long serialVersionUID = 1;
  private static final double ROOM = 7.5;

  /** A piece stands off the skin by as much, its wall included (mm). */
  private static final double PIECES = 4;

  /** Lines of words over the section and under it. */
  private static final double WORDS_ABOVE = 2.7;

  private static final double WORDS_BELOW = 1.7;

  private static final float HAIR = 1;

  /** From arrow to arrow along the skin (mm). */
  private static final double PRESSURE_STEP = 1.2;

  /** Length of an arrow (mm/kPa), and the pressure that is drawn at least (kPa). */
  private static final double ARROW = 0.35;

  private static final double LEAST_ARROW = 0.3;

  /** Share of a finger's width that its arrows leave. */
  private static final double BETWEEN_ARROWS = 0.7;

  private static final double SCALE_MM = 5;
  private static final int SWATCH = 10;

  /** From the end of a word of the key to the next, with its swatch. */
  private static final int KEY_STEP = SWATCH + 4 + 14;

  /** Lightness of a skin on which dark lines read better, of 255. */
  private static final double BRIGHT = 110;

  private transient DesignShapes design;
  private transient CrossSection section;
  private transient Palette palette = Palette.LIGHT;
  private SkinTone tone = SkinTone.NEUTRAL;
  private double scale = 1;

  /** Height of the centreline in the drawing (px). */
  private double middle;

  private final transient List<Rectangle2D> written = new ArrayList<>();
  private transient Optional<SkinPressure> pressure = Optional.empty();

  public SectionDrawing() {
    setPreferredSize(new Dimension(300, 250));
    getAccessibleContext().setAccessibleName("Section drawing");
  }

  /** Shows a section of a design. */
  public void show(DesignShapes next, CrossSection other) {
    design = next;
    section = other;
    repaint();
  }

  /** Shows nothing. */
  public void clear() {
    design = null;
    section = null;
    pressure = Optional.empty();
    repaint();
  }

  public void setPalette(Palette other) {
    palette = other;
    repaint();
  }

  /** Shows what presses on the skin as arrows on its line, or nothing. */
  public void setPressure(Optional<SkinPressure> other) {
    pressure = other;
    repaint();
  }

  public void setTone(SkinTone other) {
    tone = other;
    repaint();
  }

  /** Pixels of one mm, the same all along a finger. */
  double scale() {
    return scale;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setColor(palette.paper());
    g.fillRect(0, 0, getWidth(), getHeight());
    if (section != null) {
      int line = g.getFontMetrics(getFont()).getHeight();
      double top = WORDS_ABOVE * line;
      double tall = Math.max(1, getHeight() - top - WORDS_BELOW * line);
      middle = top + tall / 2;
      scale = Math.min(getWidth() / (2 * widest()), tall / (2 * (deepest() - ROOM + PIECES)));
      g.setFont(getFont());
      drawing(g);
    }
    g.dispose();
  }

  private double widest() {
    double most = 0;
    for (double s = 0; s < design.orthosis().digit().tip(); s += 2) {
      most = Math.max(most, design.orthosis().digit().slice(s).halfWidth());
    }
    return most + ROOM;
  }

  private double deepest() {
    double most = 0;
    for (double s = 0; s < design.orthosis().digit().tip(); s += 2) {
      most = Math.max(most, design.orthosis().digit().slice(s).halfDepth());
    }
    return most + ROOM;
  }

  private void drawing(Graphics2D g) {
    written.clear();
    g.setStroke(new BasicStroke(HAIR));
    fill(g, List.of(section.skin()), tone.colour(), palette.ink());
    section.liner().ifPresent(liner -> fill(g, List.of(liner), palette.liner(), palette.ink()));
    for (CrossSection.Cut cut : section.cuts()) {
      Color colour = cut.piece().isDorsal() ? palette.shell() : palette.trough();
      fill(g, cut.loops(), colour, palette.ink());
    }
    section.cuts().forEach(cut -> bridge(g, cut.bridge()));
    midlateral(g);
    if (pressure.isPresent()) {
      pressures(g, pressure.get());
    } else {
      section.gaps().forEach(gap -> gap(g, gap));
    }
    directions(g);
    scaleBar(g);
    key(g);
  }

  /** What the colours stand for, of what is met here. */
  private void key(Graphics2D g) {
    Map<String, Color> words = new LinkedHashMap<>();
    words.put("skin", tone.colour());
    section.liner().ifPresent(liner -> words.put("liner", palette.liner()));
    section.cut(false).ifPresent(cut -> words.put("trough", palette.trough()));
    section.cut(true).ifPresent(cut -> words.put("shell", palette.shell()));
    if (section.cuts().stream().anyMatch(cut -> cut.bridge().rise() > 0)) {
      words.put("bridged", palette.axis());
    }
    FontMetrics font = g.getFontMetrics();
    int wide = words.keySet().stream().mapToInt(w -> font.stringWidth(w) + KEY_STEP).sum();
    double x = (getWidth() - wide + KEY_STEP - SWATCH - 4) / 2.0;
    double base = 2.0 * font.getHeight() + 8;
    for (Map.Entry<String, Color> word : words.entrySet()) {
      Rectangle2D swatch = new Rectangle2D.Double(x, base - SWATCH + 1, SWATCH, SWATCH);
      g.setColor(word.getValue());
      g.fill(swatch);
      g.setColor(palette.ink());
      g.draw(swatch);
      g.drawString(word.getKey(), (float) x + SWATCH + 4, (float) base);
      x += font.stringWidth(word.getKey()) + KEY_STEP;
    }
  }

  /** A thick line along the skin that a piece bridges. */
  private void bridge(Graphics2D g, CrossSection.SectionBridge bridge) {
    g.setColor(palette.axis());
    g.setStroke(new BasicStroke(3, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    for (int i = 0; i < bridge.skin().size(); i += 2) {
      double[] from = bridge.skin().get(i);
      double[] to = bridge.skin().get(i + 1);
      g.draw(new Line2D.Double(x(from[0]), y(from[1]), x(to[0]), y(to[1])));
    }
    g.setStroke(new BasicStroke(HAIR));
  }

  private double x(double y) {
    return getWidth() / 2.0 + y * scale;
  }

  private double y(double z) {
    return middle - z * scale;
  }

  private void fill(Graphics2D g, List<Loop> loops, Color inside, Color line) {
    Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    for (Loop loop : loops) {
      path.moveTo(x(loop.y(0)), y(loop.n(0)));
      for (int i = 1; i < loop.size(); i++) {
        path.lineTo(x(loop.y(i)), y(loop.n(i)));
      }
      path.closePath();
    }
    g.setColor(inside);
    g.fill(path);
    g.setColor(line);
    g.draw(path);
  }

  /** The palette in which things are drawn on the skin, whose tone may be bright in the dark. */
  private Palette onSkin() {
    Color c = tone.colour();
    double light = 0.2126 * c.getRed() + 0.7152 * c.getGreen() + 0.0722 * c.getBlue();
    return Palette.of(light < BRIGHT);
  }

  private void midlateral(Graphics2D g) {
    g.setColor(onSkin().midlateral());
    double[] right = section.midlateral().get(0);
    double[] left = section.midlateral().get(1);
    float[] dashes = {5, 4};
    g.setStroke(new BasicStroke(HAIR, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0));
    g.draw(new Line2D.Double(x(left[0]), y(left[1]), x(right[0]), y(right[1])));
    double nameX = x((left[0] + right[0]) / 2);
    double nameY = y(right[1]) - 5;
    centred(g, "mid-lateral", nameX, nameY);
    FontMetrics font = g.getFontMetrics();
    double w = font.stringWidth("mid-lateral");
    written.add(
        new Rectangle2D.Double(nameX - w / 2, nameY - font.getAscent(), w, font.getHeight()));
    g.setColor(palette.midlateral());
    g.setStroke(new BasicStroke(1.5f));
    for (double[] point : section.midlateral()) {
      double out = Math.signum(point[0]) * 5.5;
      g.draw(
          new Line2D.Double(x(point[0] - out * 0.35), y(point[1]), x(point[0] + out), y(point[1])));
    }
    g.setStroke(new BasicStroke(HAIR));
  }

  private void gap(Graphics2D g, GapLine gap) {
    FontMetrics font = g.getFontMetrics();
    double fx = x(gap.y());
    double fy = y(gap.z());
    double tx = fx - gap.outY() * 20;
    double ty = fy + gap.outZ() * 20;
    String text = String.format(java.util.Locale.ROOT, "%.2f", gap.millimetres());
    double w = font.stringWidth(text);
    Rectangle2D box =
        new Rectangle2D.Double(
            tx - gap.outY() * w / 2 - w / 2 - 2, ty + gap.outZ() * 8 - 8, w + 4, 16);
    if (written.stream().anyMatch(box::intersects)) {
      // In a small drawing there is no room for all of them; the table has the least.
      return;
    }
    written.add(box);
    g.setColor(onSkin().ink());
    g.draw(new Line2D.Double(fx, fy, tx, ty));
    g.setColor(Translucent.of(palette.card(), 0.9));
    g.fill(box);
    g.setColor(palette.ink());
    g.drawString(
        text, (float) box.getX() + 2, (float) (box.getCenterY() + font.getAscent() / 2.0 - 2));
  }

  /** An arrow into the skin every few millimetres, the longer the harder it is pressed there. */
  private void pressures(Graphics2D g, SkinPressure shown) {
    double station = section.station();
    DigitSurface digit = design.orthosis().digit();
    Slice slice = digit.slice(station);
    SectionPlane plane = SectionPlane.at(digit, station);
    boolean left = design.orthosis().order().measurements().hand() == Hand.LEFT;
    double half = slice.circumference() / 2;
    g.setColor(onSkin().axis());
    g.setStroke(new BasicStroke(2));
    double most = 0;
    for (double girth = -half; girth < half; girth += PRESSURE_STEP) {
      double kilopascal = 1000 * shown.field().onSkin(station, left ? -girth : girth);
      most = Math.max(most, kilopascal);
      if (kilopascal > LEAST_ARROW) {
        Vector3D at = slice.point(slice.angle(girth)).subtract(plane.origin());
        Vector3D out = slice.normal(slice.angle(girth));
        double length = ARROW * kilopascal;
        double tailY = x(at.getY());
        double tailZ = y(at.dot(plane.dorsal()));
        double headY = x(at.getY() - length * out.getY());
        double headZ = y(at.dot(plane.dorsal()) - length * out.dot(plane.dorsal()));
        g.draw(new Line2D.Double(tailY, tailZ, headY, headZ));
      }
    }
    g.setStroke(new BasicStroke(HAIR));
    String text =
        shown.passing()
            ? "computing ..."
            : String.format(java.util.Locale.ROOT, "%.0f kPa at a point", most);
    FontMetrics font = g.getFontMetrics();
    // Between the arrows, or over the word under the drawing where a finger's end is too slim.
    boolean fits = font.stringWidth(text) < BETWEEN_ARROWS * 2 * slice.halfWidth() * scale;
    double line = fits ? middle + font.getHeight() : getHeight() - 6.0 - font.getHeight();
    g.setColor(fits ? onSkin().ink() : palette.ink());
    centred(g, text, getWidth() / 2.0, line);
  }

  private void directions(Graphics2D g) {
    FontMetrics font = g.getFontMetrics();
    g.setColor(palette.quiet());
    centred(g, "dorsal", getWidth() / 2.0, font.getAscent() + 3);
    centred(g, "volar", getWidth() / 2.0, getHeight() - 6);
    String from = "seen from the tip";
    g.drawString(from, getWidth() - 6 - font.stringWidth(from), getHeight() - 6);
    Hand hand = design.orthosis().order().measurements().hand();
    String right = hand == Hand.RIGHT ? "radial" : "ulnar";
    String left = hand == Hand.RIGHT ? "ulnar" : "radial";
    g.drawString(left, 6, font.getAscent() + 3);
    g.drawString(right, getWidth() - 6 - font.stringWidth(right), font.getAscent() + 3);
  }

  private static void centred(Graphics2D g, String text, double x, double y) {
    g.drawString(text, (float) (x - g.getFontMetrics().stringWidth(text) / 2.0), (float) y);
  }

  private void scaleBar(Graphics2D g) {
    double y = getHeight() - 10;
    g.setColor(palette.ink());
    g.setStroke(new BasicStroke(1.5f));
    g.draw(new Line2D.Double(10, y, 10 + SCALE_MM * scale, y));
    g.draw(new Line2D.Double(10, y - 4, 10, y));
    g.draw(new Line2D.Double(10 + SCALE_MM * scale, y - 4, 10 + SCALE_MM * scale, y));
    g.drawString((int) SCALE_MM + " mm", 10, (float) y - 8);
  }

  /** What is drawn, for whoever looks at the numbers. */
  public Optional<CrossSection> section() {
    return Optional.ofNullable(section);
  }
}
