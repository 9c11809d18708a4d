package org.midlateral.viewer.view;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.measurement.Hand;
import org.midlateral.viewer.colour.Scale;
import org.midlateral.viewer.scene.Made;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.section.Colouring;
import org.midlateral.viewer.section.Stations;
import org.midlateral.viewer.stage.Actor;
import org.midlateral.viewer.stage.Orbit;
import org.midlateral.viewer.stage.RenderedFrame;
import org.midlateral.viewer.stage.Stage;

/** The finger with its orthosis. */
public final class FingerView extends StageView {
  private static final long serialVersionUID = 1;
  private static final Orbit FIRST = new Orbit(Vector3D.of(20, 0, 0), -1.1, -0.42, 60);
  private static final int CLICK_SLOP = 4;

  private transient Made.MadeView view;
  private transient Colouring colouring = Colouring.PLAIN;
  private transient DisplayChoice choice = DisplayChoice.first();
  private transient Palette palette = Palette.LIGHT;
  private transient DoubleConsumer stationListener = station -> {};
  private double station;
  private Point pointer;
  private String note = "";

  public FingerView(Stage stage) {
    super(stage, FIRST);
    getAccessibleContext().setAccessibleName("Finger and orthosis");
    MouseAdapter pointing = new Pointing();
    addMouseListener(pointing);
    addMouseMotionListener(pointing);
  }

  /** Calls back with the station of each click on a piece (mm). */
  public void onStation(DoubleConsumer listener) {
    stationListener = listener;
  }

  /** The next design is fitted to the window. */
  public void forget() {
    view = null;
  }

  /** Shows a design. */
  public void show(Made.MadeView next, Colouring colours) {
    boolean first = view == null;
    view = next;
    colouring = colours;
    note = "";
    if (first) {
      fit();
    } else {
      refresh();
    }
  }

  /** Says something about what is shown until the next design is; empty for nothing. */
  public void setNote(String sentence) {
    note = sentence;
    repaint();
  }

  public void choose(DisplayChoice other) {
    choice = other;
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
    look(new Orbit(orbit().target(), side.yaw(hand()), side.pitch(), orbit().span()));
    fit();
  }

  private Hand hand() {
    return view == null ? Hand.RIGHT : view.orthosis().order().measurements().hand();
  }

  @Override
  protected void resized() {
    if (view != null && frame() == null) {
      fit();
    } else {
      refresh();
    }
  }

  @Override
  protected int footer() {
    return colouring.quantity() == Quantity.NONE ? 0 : Legend.HEIGHT;
  }

  @Override
  protected void drawFooter(Graphics2D g, int width) {
    new Legend(colouring, palette).draw(g, width);
  }

  @Override
  protected Color paper() {
    return palette.paper();
  }

  @Override
  protected List<Actor> actors() {
    if (view == null) {
      return List.of();
    }
    List<Actor> actors = new ArrayList<>(SceneContents.of(view, colouring, choice, palette));
    if (choice.of(ViewPart.MARKS) != PartVisibility.HIDDEN) {
      Actor.Look look = new Actor.Look(palette.accent(), null, 1, false);
      actors.add(0, Actor.of("Section", Stations.hoop(view, station), look));
    }
    return actors;
  }

  @Override
  protected void over(Graphics2D g, RenderedFrame shown, int width, int height) {
    if (view == null) {
      return;
    }
    Orbit orbit = shown.picture().orbit();
    List<Rectangle2D> taken = new ArrayList<>();
    taken.add(ScaleBar.draw(g, orbit, width, height, palette));
    taken.add(Compass.draw(g, orbit, hand(), width, height, palette));

    if (!note.isEmpty()) {
      taken.add(Notes.draw(g, note, 12, 12, palette));
    }
    if (choice.of(ViewPart.MARKS) != PartVisibility.HIDDEN) {
      new Names(orbit, width, height, palette, taken).draw(g, view.landmarks());
    }
    if (pointer != null) {
      reading().ifPresent(text -> Notes.draw(g, text, pointer.x + 14, pointer.y + 18, palette));
    }
  }

  /** What the pointer rests on, in words. */
  public Optional<String> reading() {
    if (view == null || pointer == null) {
      return Optional.empty();
    }
    return hit(pointer).map(this::describe);
  }

  private Optional<Pointer.Hit> hit(Point at) {
    List<Actor> solid = new ArrayList<>();
    for (Actor actor : SceneContents.of(view, colouring, choice, palette)) {
      if (actor.shape() == view.skin() || piece(actor) >= 0) {
        solid.add(actor);
      }
    }
    return Pointer.hit(solid, orbit(), at.x, at.y, getWidth(), pictureHeight());
  }

  private int piece(Actor actor) {
    for (int i = 0; i < view.pieces().size(); i++) {
      if (view.pieces().get(i).shape() == actor.shape()) {
        return i;
      }
    }
    return -1;
  }

  private String describe(Pointer.Hit hit) {
    Vector3D onFinger = hit.point().subtract(hit.actor().place());
    String where =
        String.format(
            Locale.ROOT, "station %.1f mm", Stations.nearest(view.orthosis().digit(), onFinger));
    int piece = piece(hit.actor());
    if (piece < 0 || colouring.values().isEmpty() || colouring.paints().get(piece).isEmpty()) {
      return hit.actor().name() + ", " + where;
    }
    Quantity quantity = colouring.quantity();
    double value = hit.value(colouring.values().get(piece));
    return hit.actor().name()
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
      if (view != null && pressed != null && pressed.distance(e.getPoint()) <= CLICK_SLOP) {
        hit(e.getPoint())
            .ifPresent(
                hit ->
                    stationListener.accept(
                        Stations.nearest(
                            view.orthosis().digit(), hit.point().subtract(hit.actor().place()))));
      }
    }
  }
}
