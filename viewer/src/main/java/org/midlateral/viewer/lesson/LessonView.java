package org.midlateral.viewer.lesson;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.mechanics.ThreePoint;
import org.midlateral.viewer.colour.Scale;
import org.midlateral.viewer.render.OffscreenRenderer;
import org.midlateral.viewer.render.Orbit;
import org.midlateral.viewer.render.RenderedFrame;
import org.midlateral.viewer.render.SceneItem;
import org.midlateral.viewer.view.Palette;
import org.midlateral.viewer.view.SceneView;

/** The wraps side by side, bending, with their figures under them. */
final class LessonView extends SceneView {
  private static final long serialVersionUID = 1;
  private static final double APART = 52;
  private static final double YAW = Math.toRadians(122);
  private static final double PITCH = Math.toRadians(14);
  private static final double ARROW = 11;

  /** Displacement as drawn (mm) from which on it shows. */
  private static final double LEAST_SEEN = 1;

  /** Opacity of a piece where it was before the load. */
  private static final double PALE = 0.22;

  private transient Comparison comparison;
  private transient Step step = Step.FIRST;
  private transient Palette palette = Palette.LIGHT;
  private String title = "";
  private double phase;

  LessonView(OffscreenRenderer renderer) {
    super(renderer, new Orbit(Vector3D.ZERO, YAW, PITCH, 60));
    getAccessibleContext().setAccessibleName("Wraps compared");
  }

  void show(Comparison other, String whose) {
    comparison = other;
    title = whose;
    look(new Orbit(Vector3D.ZERO, YAW, PITCH, 60));
    fit();
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
    return orbitRight().multiply((wrap - middle) * APART);
  }

  /** The row runs across the first view, however it is turned later. */
  private static Vector3D orbitRight() {
    return new Orbit(Vector3D.ZERO, YAW, 0, 1).right();
  }

  @Override
  protected List<SceneItem> items() {
    List<SceneItem> items = new ArrayList<>();
    if (comparison == null) {
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
    fit();
  }

  @Override
  protected int footer() {
    return FigureTable.height(getFontMetrics(getFont()));
  }

  @Override
  protected int margin() {
    return FigureTable.LABELS - 60;
  }

  @Override
  protected void over(Graphics2D g, RenderedFrame shown, int width, int height) {
    if (comparison == null) {
      return;
    }
    Orbit orbit = shown.picture().orbit();
    for (int i = 0; i < comparison.cases().size(); i++) {
      if (step.isLoaded(i)) {
        forces(g, orbit, i, width, height);
      }
    }
    g.setColor(palette.ink());
    g.drawString(title, 14, 8 + g.getFontMetrics().getAscent());
    g.setColor(palette.quiet());
    int line = g.getFontMetrics().getHeight();
    List<String> notes = notes();
    for (int i = 0; i < notes.size(); i++) {
      g.drawString(notes.get(i), 14, height - 12 - line * (notes.size() - 1 - i));
    }
  }

  /** What is drawn, and how large. */
  private List<String> notes() {
    String times = "Deflections drawn × " + Scale.text(comparison.exaggeration());
    return comparison.byElements()
        ? List.of(times + ", as the finite elements find them.", "Pale: before the load.")
        : List.of(
            times + ", as a beam's:",
            "finite elements cannot be had for every wrap here.",
            "Pale: before the load.");
  }

  /** The three forces: the ends press volarly, the closure pulls dorsally. */
  private void forces(Graphics2D g, Orbit orbit, int wrap, int width, int height) {
    ThreePoint support = comparison.cases().get(wrap).support();
    double[] stations = {
      support.proximal().middle(), support.closure().middle(), support.distal().middle()
    };
    g.setColor(palette.axis());
    g.setStroke(new BasicStroke(2));
    for (int i = 0; i < stations.length; i++) {
      boolean dorsally = i == 1;
      double half = comparison.digit().halfDepth(stations[i]);
      double from = dorsally ? 0 : -half + 6;
      double to = dorsally ? ARROW : -half + 6 - ARROW;
      Vector3D tail =
          orbit.project(
              BentWrap.upright(comparison.digit(), stations[i], from).add(place(wrap)),
              width,
              height);
      Vector3D head =
          orbit.project(
              BentWrap.upright(comparison.digit(), stations[i], to).add(place(wrap)),
              width,
              height);
      arrow(g, tail, head);
    }
  }

  private static void arrow(Graphics2D g, Vector3D tail, Vector3D head) {
    double dx = head.getX() - tail.getX();
    double dy = head.getY() - tail.getY();
    double length = Math.hypot(dx, dy);
    if (length < 4) {
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
