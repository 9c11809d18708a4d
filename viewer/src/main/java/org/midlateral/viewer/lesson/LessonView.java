package org.midlateral.viewer.lesson;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.ToolTipManager;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.mechanics.ThreePoint;
import org.midlateral.viewer.colour.Scale;
import org.midlateral.viewer.drawing.Palette;
import org.midlateral.viewer.render.OffscreenRenderer;
import org.midlateral.viewer.render.Orbit;
import org.midlateral.viewer.render.RenderedFrame;
import org.midlateral.viewer.render.SceneItem;
import org.midlateral.viewer.view.SceneView;

/** The wraps side by side, bending, with their figures under them. */
final class LessonView extends SceneView {
  private static final long serialVersionUID = 1;

  /** From wrap to wrap at least, and at most where there is room (mm). */
  private static final double APART = 52;

  private static final double FAR_APART = 84;

  /** Of the picture over what is in it, along and across. */
  private static final double ROOM = 1.3;

  /** Width of one wrap as it is seen (mm). */
  private static final double ACROSS = 30;

  private static final double YAW = Math.toRadians(122);
  private static final double PITCH = Math.toRadians(14);
  private static final double ARROW = 16;

  /** Size of the type, and of the view that it is for (px). */
  private static final double PLAIN_SIZE = 13;

  private static final double USUAL_WIDTH = 1280;
  private static final double USUAL_HEIGHT = 620;

  /** Displacement as drawn (mm) from which on it shows. */
  private static final double LEAST_SEEN = 1;

  /** Opacity of a piece where it was before the load. */
  private static final double PALE = 0.22;

  private transient Comparison comparison;
  private transient Step step = Step.FIRST;
  private transient Palette palette = Palette.LIGHT;
  private String title = "";
  private double phase;
  private double highest;
  private double lowest;
  private double apart = APART;

  LessonView(OffscreenRenderer renderer) {
    super(renderer, new Orbit(Vector3D.ZERO, YAW, PITCH, 60));
    getAccessibleContext().setAccessibleName("Troughs compared");
    ToolTipManager.sharedInstance().registerComponent(this);
  }

  void show(Comparison other, String whose) {
    comparison = other;
    title = whose;
    findEnds(other.cases().get(0));
    spread();
    look(new Orbit(Vector3D.ZERO, YAW, PITCH, 60));
    fit();
  }

  /** The highest and the lowest point of the first wrap, where its ends are named. */
  private void findEnds(BentWrap first) {
    highest = -Double.MAX_VALUE;
    lowest = Double.MAX_VALUE;
    for (BentWrap.Part part : first.parts()) {
      for (int v = 0; v < part.shape().vertexCount(); v++) {
        highest = Math.max(highest, part.shape().at(v, 2));
        lowest = Math.min(lowest, part.shape().at(v, 2));
      }
    }
  }

  /** The same step of the same finger in a view of its own, for slides. */
  LessonView forSlides(OffscreenRenderer renderer, double share) {
    LessonView other = new LessonView(renderer);
    other.setFont(getFont());
    other.palette = palette;
    other.step = step;
    other.phase = share;
    other.show(comparison, title);
    return other;
  }

  /** Shows nothing. */
  void clear() {
    comparison = null;
    forgetPicture();
  }

  void setStep(Step other) {
    step = other;
    refresh();
  }

  /** How much of the load is on, 0 to 1. */
  void setPhase(double share) {
    phase = share;
    refresh();
  }

  void setPalette(Palette other) {
    palette = other;
    refresh();
  }

  /** Where a wrap stands, in order from the left. */
  private Vector3D place(int wrap) {
    double middle = (comparison.cases().size() - 1) / 2.0;
    return orbitRight().multiply((wrap - middle) * apart);
  }

  /** The row takes the width there is. */
  private void spread() {
    if (comparison != null) {
      double pixel = ROOM * (highest - lowest) / pictureHeight();
      double row = (getWidth() - margin()) * pixel / ROOM - ACROSS;
      double column = row / (comparison.cases().size() - 1);
      apart = Math.max(APART, Math.min(FAR_APART, column));
    }
  }

  /** The row runs across the first view, however it is turned later. */
  private static Vector3D orbitRight() {
    return new Orbit(Vector3D.ZERO, YAW, 0, 1).right();
  }

  @Override
  protected List<SceneItem> items() {
    List<SceneItem> items = new ArrayList<>();
    if (comparison == null || step.reason(comparison).isPresent()) {
      return items;
    }
    List<SceneItem> unloaded = new ArrayList<>();
    for (int i = 0; i < comparison.cases().size(); i++) {
      double amount = step.isLoaded(i) ? phase * comparison.exaggeration() : 0;
      for (BentWrap.Part part : comparison.cases().get(i).parts()) {
        Color colour = part.dorsal() ? palette.shell() : palette.trough();
        SceneItem item = SceneItem.of("wrap " + i, part.shape(), SceneItem.Look.of(colour));
        items.add(item.at(place(i)).displaced(part.displacements(), amount));
        if (step.isLoaded(i) && isSeenToMove(i)) {
          SceneItem.Look pale = SceneItem.Look.of(palette.quiet()).withOpacity(PALE);
          unloaded.add(SceneItem.of("unloaded " + i, part.shape(), pale).at(place(i)));
        }
      }
    }
    items.addAll(unloaded);
    return items;
  }

  /**
   * Where a wrap moves by less than its drawn surface is thick, a pale one would only speckle it.
   */
  private boolean isSeenToMove(int wrap) {
    return comparison.cases().get(wrap).farthest() * comparison.exaggeration() > LEAST_SEEN;
  }

  @Override
  protected Color paper() {
    return palette.paper();
  }

  @Override
  protected void resized() {
    // Type grows with the window, as a projector wants it.
    double times = Math.min(getWidth() / USUAL_WIDTH, getHeight() / USUAL_HEIGHT);
    float size = (float) (PLAIN_SIZE * Math.max(1, times));
    setFont(getFont().deriveFont(size));
    spread();
    fit();
  }

  @Override
  protected int footer() {
    if (comparison != null && step.reason(comparison).isPresent()) {
      return 0;
    }
    return FigureTable.height(getFontMetrics(getFont()));
  }

  /** What the figures under the pointer are of. */
  @Override
  public String getToolTipText(MouseEvent e) {
    if (comparison == null) {
      return null;
    }
    return step.reason(comparison)
        .map(Step.Reason::figures)
        .orElseGet(
            () -> FigureTable.meaning(getFontMetrics(getFont()), e.getY() - pictureHeight()));
  }

  @Override
  protected int margin() {
    return FigureTable.labels(getFontMetrics(getFont())) * 3 / 4;
  }

  @Override
  protected void over(Graphics2D g, RenderedFrame shown, int width, int height) {
    if (comparison == null) {
      return;
    }
    Orbit orbit = shown.picture().orbit();
    Optional<Step.Reason> reason = step.reason(comparison);
    if (reason.isPresent()) {
      g.setColor(palette.ink());
      g.drawString(whole(), 14, 8 + g.getFontMetrics().getAscent());
      new ReasonPainter(g, palette, width, height).draw(reason.get(), comparison.reasons(), phase);
      return;
    }
    ends(g, orbit, width, height);
    for (int i = 0; i < comparison.cases().size(); i++) {
      if (step.isLoaded(i)) {
        forces(g, orbit, i, width, height);
      }
    }
    g.setColor(palette.ink());
    g.drawString(title, 14, 8 + g.getFontMetrics().getAscent());
    g.setColor(palette.quiet());
    int line = g.getFontMetrics().getHeight();
    List<String> notes = step.number() == 0 ? List.of() : notes();
    for (int i = 0; i < notes.size(); i++) {
      g.drawString(notes.get(i), 14, height - 12 - line * (notes.size() - 1 - i));
    }
  }

  /** Whose finger, under what moment, for a picture that stands alone. */
  private String whole() {
    return title + ", " + Scale.text(comparison.moment()) + " N·mm; estimate";
  }

  /** What is drawn, and how large. */
  private List<String> notes() {
    String times = "Deflections drawn × " + Scale.text(comparison.exaggeration());
    String moment = Scale.text(comparison.moment()) + " N·mm; estimate";
    return comparison.byElements()
        ? List.of(times, "Grey: before the load", moment)
        : List.of(times + ", as a beam's", "Grey: before the load", moment);
  }

  /** Which end is which, and which side. */
  private void ends(Graphics2D g, Orbit orbit, int width, int height) {
    Vector3D top = orbit.project(place(0).add(highest, Vector3D.Unit.PLUS_Z), width, height);
    Vector3D foot = orbit.project(place(0).add(lowest, Vector3D.Unit.PLUS_Z), width, height);
    int line = g.getFontMetrics().getHeight();
    g.setColor(palette.ink());
    centred(g, "tip", top.getX(), top.getY() - line);
    centred(g, "volar \u2190   \u2192 dorsal", foot.getX(), foot.getY() + 1.5 * line);
  }

  private static void centred(Graphics2D g, String text, double x, double y) {
    g.drawString(text, (float) (x - g.getFontMetrics().stringWidth(text) / 2.0), (float) y);
  }

  /**
   * The three forces as they are on now, to one scale, with their newtons: the ends press volarly,
   * the closure pulls dorsally with the sum of both.
   */
  private void forces(Graphics2D g, Orbit orbit, int wrap, int width, int height) {
    ThreePoint support = comparison.cases().get(wrap).support();
    double[] stations = {
      support.proximal().middle(), support.closure().middle(), support.distal().middle()
    };
    double[] forces = {support.proximalForce(), support.pipForce(), support.distalForce()};
    g.setStroke(new BasicStroke(2));
    for (int i = 0; i < stations.length; i++) {
      boolean dorsally = i == 1;
      double length = ARROW * phase * forces[i] / support.pipForce();
      double half = comparison.digit().halfDepth(stations[i]);
      double from = dorsally ? 0 : -half + 6;
      double to = dorsally ? length : -half + 6 - length;
      Vector3D tail = seen(orbit, stations[i], from, wrap, width, height);
      Vector3D head = seen(orbit, stations[i], to, wrap, width, height);
      g.setColor(palette.axis());
      arrow(g, tail, head);
      String newtons = String.format(Locale.ROOT, "%.1f N", phase * forces[i]);
      double w = g.getFontMetrics().stringWidth(newtons);
      if (phase > 0) {
        // At the proximal end the tongue would lie under it.
        double lower = i == 0 ? g.getFontMetrics().getAscent() : 5;
        double x = dorsally ? head.getX() + 12 : head.getX() - (i == 0 ? 1.5 * lower : 12) - w;
        g.setColor(palette.ink());
        g.drawString(newtons, (float) x, (float) (head.getY() + lower));
      }
    }
  }

  private Vector3D seen(
      Orbit orbit, double station, double dorsally, int wrap, int width, int height) {
    return orbit.project(
        BentWrap.upright(comparison.digit(), station, dorsally).add(place(wrap)), width, height);
  }

  private static void arrow(Graphics2D g, Vector3D tail, Vector3D head) {
    double dx = head.getX() - tail.getX();
    double dy = head.getY() - tail.getY();
    double length = Math.hypot(dx, dy);
    if (length < 1) {
      return;
    }
    double ux = dx / length;
    double uy = dy / length;
    g.draw(new Line2D.Double(tail.getX(), tail.getY(), head.getX(), head.getY()));
    Path2D tip = new Path2D.Double();
    tip.moveTo(head.getX() + 7 * ux, head.getY() + 7 * uy);
    tip.lineTo(head.getX() - 5 * uy, head.getY() + 5 * ux);
    tip.lineTo(head.getX() + 5 * uy, head.getY() - 5 * ux);
    tip.closePath();
    g.fill(tip);
  }

  @Override
  protected void drawFooter(Graphics2D g, int width) {
    g.setColor(palette.card());
    g.fillRect(0, 0, width, footer());
    if (comparison == null) {
      return;
    }
    double[] middles = new double[comparison.cases().size()];
    for (int i = 0; i < middles.length; i++) {
      middles[i] = orbit().project(place(i), width, pictureHeight()).getX();
    }
    new FigureTable(comparison, step, palette).draw(g, middles);
  }
}
