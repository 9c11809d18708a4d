package org.midlateral.viewer.view;

import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.DoubleConsumer;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.SkinFoot;
import org.midlateral.measurement.Hand;
import org.midlateral.viewer.colour.Scale;
import org.midlateral.viewer.render.OffscreenRenderer;
import org.midlateral.viewer.render.Orbit;
import org.midlateral.viewer.render.RenderedFrame;
import org.midlateral.viewer.render.SceneItem;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.section.Colouring;
import org.midlateral.viewer.section.Stations;

/** The finger with its orthosis. */
public final class FingerView extends SceneView {
  private static final long serialVersionUID = 1;
  private static final Orbit FIRST = new Orbit(Vector3D.of(20, 0, 0), -1.1, -0.42, 60);
  private static final int CLICK_SLOP = 4;

  private transient DesignShapes design;
  private transient Optional<DesignShapes> kept = Optional.empty();
  private transient ShownColours measured = ShownColours.PLAIN;

  /** The same on the scale that fits what is seen. */
  private transient ShownColours colours = ShownColours.PLAIN;

  private transient DisplayChoice choice = DisplayChoice.first();
  private transient Palette palette = Palette.LIGHT;
  private transient DoubleConsumer stationListener = station -> {};
  private transient BiConsumer<Double, Double> reliefListener = (station, girth) -> {};
  private double station;
  private Point pointer;
  private String note = "";
  private boolean fitNext = true;

  public FingerView(OffscreenRenderer renderer) {
    super(renderer, FIRST);
    getAccessibleContext().setAccessibleName("Finger and orthosis");
    MouseAdapter pointing = new Pointing();
    addMouseListener(pointing);
    addMouseMotionListener(pointing);
  }

  /** Calls back with the station of each click on a piece (mm). */
  public void onStation(DoubleConsumer listener) {
    stationListener = listener;
  }

  /** Calls back with station and girth of each place that is to be relieved (mm). */
  public void onRelief(BiConsumer<Double, Double> listener) {
    reliefListener = listener;
  }

  /** Where on the skin a point lies, its girth counted to the radial side. */
  private void relieve(Picking.Hit hit) {
    Vector3D p = hit.point().subtract(hit.item().place());
    DigitSurface digit = design.orthosis().digit();
    double station = Stations.nearest(digit, p);
    double angle = Math.atan2(p.getY(), -(p.getZ() - digit.centre(station).getZ()));
    SkinFoot foot = new SkinFoot(digit);
    foot.find(p.getX(), p.getY(), p.getZ(), angle, station);
    reliefListener.accept(foot.station(), hand() == Hand.LEFT ? -foot.girth() : foot.girth());
  }

  /** Fits the next design to the window. */
  public void fitNext() {
    fitNext = true;
  }

  /** Shows nothing, and says why. */
  public void clear(String why) {
    design = null;
    measured = ShownColours.PLAIN;
    colours = measured;
    note = why;
    forgetPicture();
  }

  /**
   * Shows a design.
   *
   * @param ofKept the colours of the design beside it; plain where there is none
   */
  public void show(DesignShapes next, Colouring colouring, Colouring ofKept) {
    design = next;
    measured = new ShownColours(colouring, ofKept);
    fitColours();
    note = "";
    if (fitNext) {
      fitNext = false;
      fit();
    } else {
      refresh();
    }
  }

  private void fitColours() {
    colours = design == null ? measured : measured.fitted(design, kept, choice);
  }

  /** Keeps a design beside whatever is shown next; empty to show one alone again. */
  public void keep(Optional<DesignShapes> other) {
    kept = other;
    measured =
        new ShownColours(measured.now(), kept.isPresent() ? measured.now() : Colouring.PLAIN);
    fitColours();
    fit();
  }

  /** Says something about what is shown until the next design is; empty for nothing. */
  public void setNote(String sentence) {
    note = sentence;
    repaint();
  }

  public void choose(DisplayChoice other) {
    choice = other;
    fitColours();
    refresh();
  }

  public DisplayChoice choice() {
    return choice;
  }

  public void setPalette(Palette other) {
    palette = other;
    refresh();
  }

  /** Marks the station of the section. */
  public void setStation(double millimetres) {
    if (station != millimetres) {
      station = millimetres;
      refresh();
    }
  }

  /** Looks from one of the six sides, with all in view. */
  public void lookFrom(ViewSide side) {
    look(orbit().withDirection(side.yaw(hand()), side.pitch()));
    fit();
  }

  private Hand hand() {
    return design == null ? Hand.RIGHT : design.orthosis().order().measurements().hand();
  }

  @Override
  protected void resized() {
    if (design != null && frame() == null) {
      fit();
    } else {
      refresh();
    }
  }

  @Override
  protected int footer() {
    return colours.now().quantity() == Quantity.NONE ? 0 : Legend.HEIGHT;
  }

  @Override
  protected void drawFooter(Graphics2D g, int width) {
    new Legend(colours, palette).draw(g, width);
  }

  @Override
  protected Color paper() {
    return palette.paper();
  }

  @Override
  protected List<SceneItem> items() {
    if (design == null) {
      return List.of();
    }
    List<SceneItem> items =
        new ArrayList<>(SceneContents.of(design, colours.now(), choice, palette));
    if (choice.of(ViewPart.MARKS) != PartVisibility.HIDDEN) {
      SceneItem.Look look = new SceneItem.Look(palette.accent(), null, 1, false);
      items.add(0, SceneItem.of("Section", Stations.hoop(design, station), look));
    }
    if (kept.isPresent()) {
      Vector3D beside = beside(kept.get(), orbit());
      for (SceneItem item : SceneContents.of(kept.get(), colours.kept(), choice, palette)) {
        items.add(item.at(item.place().add(beside)));
      }
    }
    return items;
  }

  private Vector3D beside(DesignShapes other, Orbit orbit) {
    return SideBySide.about(design).above(SideBySide.about(other), orbit);
  }

  /** Which of the two is which, at the left. */
  private void names(Graphics2D g, Orbit orbit, int width, int height, List<Rectangle2D> taken) {
    Vector3D above = SideBySide.about(kept.orElseThrow()).middle();
    above = above.add(beside(kept.get(), orbit));
    Vector3D now = SideBySide.about(design).middle();
    double y = orbit.project(above, width, height).getY();
    taken.add(NoteCard.draw(g, "Kept", 12, y, palette));
    taken.add(NoteCard.draw(g, "Now", 12, orbit.project(now, width, height).getY(), palette));
  }

  @Override
  protected void over(Graphics2D g, RenderedFrame shown, int width, int height) {
    if (design == null) {
      instead(g);
      return;
    }
    Orbit orbit = shown.picture().orbit();
    List<Rectangle2D> taken = new ArrayList<>();
    Rectangle2D title = title(g);
    taken.add(title);
    taken.add(ScaleBar.draw(g, orbit, width, height, palette));
    taken.add(Compass.draw(g, orbit, hand(), width, height, palette));

    if (!note.isEmpty()) {
      taken.add(NoteCard.draw(g, note, 12, title.getMaxY() + 4, palette));
    }
    if (kept.isPresent()) {
      names(g, orbit, width, height, taken);
    }
    if (choice.of(ViewPart.MARKS) != PartVisibility.HIDDEN) {
      new LandmarkLabels(orbit, width, height, palette, taken).draw(g, design.landmarks());
    }
    if (pointer != null) {
      reading().ifPresent(text -> NoteCard.draw(g, text, pointer.x + 14, pointer.y + 18, palette));
    }
  }

  @Override
  protected void instead(Graphics2D g) {
    if (!note.isEmpty()) {
      NoteCard.draw(g, note, 12, 12, palette);
    }
  }

  /** Whose finger this is. */
  private Rectangle2D title(Graphics2D g) {
    String text = design.title();
    FontMetrics font = g.getFontMetrics();
    g.setColor(palette.ink());
    g.drawString(text, 12, 8 + font.getAscent());
    return new Rectangle2D.Double(8, 4, font.stringWidth(text) + 10, font.getHeight() + 6);
  }

  /** What is said about the picture, or in its place; empty for nothing. */
  public String note() {
    return note;
  }

  /** What the pointer rests on, in words. */
  public Optional<String> reading() {
    if (design == null || pointer == null) {
      return Optional.empty();
    }
    return hit(pointer).map(this::describe);
  }

  private Optional<Picking.Hit> hit(Point at) {
    List<SceneItem> solid = new ArrayList<>();
    for (SceneItem item : SceneContents.of(design, colours.now(), choice, palette)) {
      if (item.shape() == design.skin() || piece(item) >= 0) {
        solid.add(item);
      }
    }
    return Picking.hit(solid, orbit(), at.x, at.y, getWidth(), pictureHeight());
  }

  private int piece(SceneItem item) {
    for (int i = 0; i < design.pieces().size(); i++) {
      if (design.pieces().get(i).shape() == item.shape()) {
        return i;
      }
    }
    return -1;
  }

  private String describe(Picking.Hit hit) {
    Vector3D onFinger = hit.point().subtract(hit.item().place());
    String where =
        String.format(
            Locale.ROOT,
            "%.1f mm from the web",
            Stations.nearest(design.orthosis().digit(), onFinger));
    Colouring colouring = colours.now();
    int piece = piece(hit.item());
    if (piece < 0 || colouring.values().isEmpty() || colouring.colours().get(piece).isEmpty()) {
      return hit.item().name() + ", " + where;
    }
    Quantity quantity = colouring.quantity();
    double value = hit.value(colouring.values().get(piece));
    return hit.item().name()
        + ": "
        + quantity.word()
        + " "
        + (quantity.isSigned() ? Scale.signed(value) : Scale.text(value))
        + " "
        + quantity.unit()
        + ", "
        + where;
  }

  /** Reads values under the pointer, and takes a click as the choice of a station. */
  private final class Pointing extends MouseAdapter {
    private Point pressed;

    @Override
    public void mouseMoved(MouseEvent e) {
      pointer = e.getPoint();
      repaint();
    }

    @Override
    public void mouseExited(MouseEvent e) {
      pointer = null;
      repaint();
    }

    @Override
    public void mousePressed(MouseEvent e) {
      pressed = e.getPoint();
    }

    @Override
    public void mouseDragged(MouseEvent e) {
      pointer = null;
    }

    @Override
    public void mouseReleased(MouseEvent e) {
      if (design != null && pressed != null && pressed.distance(e.getPoint()) <= CLICK_SLOP) {
        if (e.isControlDown()) {
          hit(e.getPoint()).ifPresent(FingerView.this::relieve);
          return;
        }
        hit(e.getPoint())
            .ifPresent(
                hit ->
                    stationListener.accept(
                        Stations.nearest(
                            design.orthosis().digit(), hit.point().subtract(hit.item().place()))));
      }
    }
  }
}
