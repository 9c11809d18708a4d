package org.midlateral.viewer.view;

import java.awt.Color;
import java.awt.Cursor;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleConsumer;
import java.util.function.Function;
import java.util.function.IntConsumer;
import javax.swing.SwingUtilities;
import javax.swing.ToolTipManager;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.viewer.colour.Scale;
import org.midlateral.viewer.drawing.NoteCard;
import org.midlateral.viewer.drawing.Palette;
import org.midlateral.viewer.render.OffscreenRenderer;
import org.midlateral.viewer.render.Orbit;
import org.midlateral.viewer.render.RenderedFrame;
import org.midlateral.viewer.render.SceneItem;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.section.Colouring;
import org.midlateral.viewer.section.Stations;
import org.midlateral.viewer.view.Rise.SkinPlace;

/** The finger with its orthosis. */
public final class FingerView extends SceneView {
  private static final long serialVersionUID = 1;
  private static final Orbit FIRST = new Orbit(Vector3D.of(20, 0, 0), -1.1, -0.42, 60);
  private static final int CLICK_SLOP = 4;

  private static final String HOOP = "The section; drag it along the finger";

  private transient DesignShapes design;

  /** Those of the design. */
  private transient List<Rise> rises = List.of();

  private transient Optional<DesignShapes> kept = Optional.empty();
  private transient ShownColours measured = ShownColours.PLAIN;

  /** The same on the scale that fits what is seen. */
  private transient ShownColours colours = ShownColours.PLAIN;

  private transient DisplayChoice choice = DisplayChoice.first();
  private transient Palette palette = Palette.LIGHT;
  private transient DoubleConsumer stationListener = station -> {};
  private transient RiseListener riseListener;
  private transient Runnable rulerListener = () -> {};
  private final transient Ruler ruler = new Ruler();

  /** Number of the rise that was touched last. */
  private OptionalInt chosen = OptionalInt.empty();

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
    riseKeys();
    ToolTipManager.sharedInstance().registerComponent(this);
  }

  /** Calls back with the station of each click on a piece (mm). */
  public void onStation(DoubleConsumer listener) {
    stationListener = listener;
  }

  /** Tells what is done to the rises of the relief. */
  public void onRise(RiseListener listener) {
    riseListener = listener;
  }

  /** Calls back when measuring begins or ends. */
  public void onMeasuring(Runnable listener) {
    rulerListener = listener;
  }

  /** Whether clicks set the ends of a distance. */
  public boolean isMeasuring() {
    return ruler.isOn();
  }

  /** Lets clicks set the ends of a distance, or ends that. */
  public void setMeasuring(boolean on) {
    ruler.setOn(on);
    setCursor(Cursor.getPredefinedCursor(on ? Cursor.CROSSHAIR_CURSOR : Cursor.DEFAULT_CURSOR));
    rulerListener.run();
    repaint();
  }

  /** Takes the points that were clicked away, or else ends measuring; whether there was any. */
  public boolean escape() {
    if (!ruler.isOn()) {
      return false;
    }
    if (ruler.isEmpty()) {
      setMeasuring(false);
    } else {
      ruler.clear();
      repaint();
    }
    return true;
  }

  /** The distance between two points clicked, in words; empty while there is none. */
  public Optional<String> measured() {
    return design == null ? Optional.empty() : ruler.text(unit(), this::place);
  }

  private LengthUnit unit() {
    return design.orthosis().order().measurements().unit();
  }

  private Ruler.Spot spot(Picking.Hit hit) {
    return new Ruler.Spot(piece(hit.item()), onFinger(hit));
  }

  private Vector3D place(Ruler.Spot spot) {
    boolean skin = spot.piece() < 0 || spot.piece() >= design.pieces().size();
    return skin
        ? spot.onFinger()
        : spot.onFinger()
            .add(SceneContents.pulled(design, design.pieces().get(spot.piece()), choice.pull()));
  }

  private boolean showsMarks() {
    return choice.of(ViewPart.MARKS) != PartVisibility.HIDDEN;
  }

  /** The skin under a point of the picture, through whatever lies over it. */
  private Optional<SkinPlace> skinUnder(DesignShapes on, Point at) {
    SceneItem skin = SceneItem.of("", on.skin(), SceneItem.Look.of(Color.BLACK));
    return Picking.hit(List.of(skin), orbit(), at.x, at.y, getWidth(), pictureHeight())
        .map(hit -> SkinPlace.near(on.orthosis().digit(), hit.point()));
  }

  /** The rise under a point of the picture. */
  private Optional<Rise> rise(Point at) {
    if (rises.isEmpty() || !showsMarks()) {
      return Optional.empty();
    }
    return hit(at)
        .map(this::skinPlace)
        .flatMap(p -> rises.stream().filter(rise -> rise.holds(p)).findFirst());
  }

  private Vector3D onFinger(Picking.Hit hit) {
    return hit.point().subtract(hit.item().place());
  }

  private SkinPlace skinPlace(Picking.Hit hit) {
    return SkinPlace.near(design.orthosis().digit(), onFinger(hit));
  }

  private void relieve(Picking.Hit hit) {
    SkinPlace place = skinPlace(hit);
    chosen = OptionalInt.of((int) rises.stream().filter(r -> !r.isOfPair()).count());
    riseListener.added(place.station(), Rise.side(design) * place.girth());
  }

  @Override
  Optional<DragHandle> handle(MouseEvent press) {
    Point at = press.getPoint();
    if (design == null || !showsMarks() || ruler.isOn()) {
      return Optional.empty();
    }
    Optional<Rise> rise = rise(at);
    if (rise.isPresent()) {
      chosen = OptionalInt.of(rise.get().number());
      repaint();
      // What is dragged is the finger that was pressed, whatever is made of it meanwhile.
      DesignShapes on = design;
      return skinUnder(on, at).map(place -> dragged(rise.get(), place, on));
    }
    return hoop(at);
  }

  private DragHandle dragged(Rise rise, SkinPlace at, DesignShapes on) {
    Function<Point, Optional<SkinPlace>> skin = p -> skinUnder(on, p);
    return rise.isOfPair()
        ? new PairDrag(rise, at, skin, riseListener)
        : new RiseDrag(rise, at, Rise.side(on), skin, riseListener);
  }

  private Optional<DragHandle> hoop(Point at) {
    return HoopDrag.at(
        at,
        design,
        station,
        orbit(),
        getWidth(),
        pictureHeight(),
        () -> hit(at).map(Picking.Hit::depth),
        stationListener);
  }

  @Override
  boolean wheeled(MouseWheelEvent e) {
    Optional<Rise> under = ruler.isOn() ? Optional.empty() : rise(e.getPoint());
    under.ifPresent(
        rise -> {
          chosen = OptionalInt.of(rise.number());
          if (e.getWheelRotation() != 0) {
            riseListener.raised(rise.number(), -e.getWheelRotation());
          }
        });
    return under.isPresent();
  }

  /** Keys for the rise that was touched last. */
  private void riseKeys() {
    key("PAGE_UP", () -> withChosen(number -> riseListener.raised(number, 1)));
    key("PAGE_DOWN", () -> withChosen(number -> riseListener.raised(number, -1)));
    key("DELETE", () -> withChosen(number -> riseListener.takenOut(number)));
  }

  private void withChosen(IntConsumer action) {
    if (chosen.isPresent() && rises.stream().anyMatch(rise -> rise.number() == chosen.getAsInt())) {
      action.accept(chosen.getAsInt());
    }
  }

  /** Fits the next design to the window. */
  public void fitNext() {
    chosen = OptionalInt.empty();
    fitNext = true;
  }

  /** Shows nothing, and says why. */
  public void clear(String why) {
    design = null;
    rises = List.of();
    ruler.clear();
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
    if (!next.equals(design)) {
      // What was measured was measured on another.
      ruler.clear();
    }
    design = next;
    rises = Rise.of(next);
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
    return colours.now().quantity() == Quantity.NONE ? 0 : Legend.height(getWidth());
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
    if (showsMarks()) {
      SceneItem.Look look = new SceneItem.Look(palette.accent(), null, 1, false);
      items.add(0, SceneItem.of("Section", Stations.hoop(design, station), look));
    }
    items.addAll(keptItems(orbit()));
    return items;
  }

  /** The design that is kept, above the other. */
  private List<SceneItem> keptItems(Orbit orbit) {
    if (kept.isEmpty()) {
      return List.of();
    }
    Vector3D beside = beside(kept.get(), orbit);
    return SceneContents.of(kept.get(), colours.kept(), choice, palette).stream()
        .map(item -> item.at(item.place().add(beside)))
        .toList();
  }

  private Vector3D beside(DesignShapes other, Orbit orbit) {
    return SideBySide.about(design).above(SideBySide.about(other), orbit);
  }

  /** Over the legend: what its figures are of. */
  @Override
  public String getToolTipText(MouseEvent e) {
    boolean legend = footer() > 0 && e.getY() >= pictureHeight();
    return legend ? colours.now().quantity().meaning() : null;
  }

  private Optional<FingerOverlay.Middles> middles(Orbit orbit) {
    return kept.map(
        other ->
            new FingerOverlay.Middles(
                SideBySide.about(other).middle().add(beside(other, orbit)),
                SideBySide.about(design).middle()));
  }

  @Override
  protected void over(Graphics2D g, RenderedFrame shown, int width, int height) {
    if (design == null) {
      instead(g);
      return;
    }
    Orbit orbit = shown.picture().orbit();
    new FingerOverlay(
            design,
            solid(),
            keptItems(orbit),
            middles(orbit),
            choice,
            palette,
            note,
            rises,
            chosen,
            orbit,
            width,
            height)
        .draw(g);
    Optional<Ruler.Spot> pointed =
        ruler.isOn() && pointer != null ? hit(pointer).map(this::spot) : Optional.empty();
    ruler.draw(
        g,
        pointed,
        unit(),
        this::place,
        point -> orbit.project(point, width, height),
        width,
        palette);
    if (pointer != null && !ruler.isOn()) {
      reading()
          .ifPresent(
              text -> NoteCard.draw(g, text, pointer.x + 14, pointer.y + 18, width, palette));
    }
  }

  @Override
  protected void instead(Graphics2D g) {
    if (!note.isEmpty()) {
      NoteCard.draw(g, note, 12, 12, getWidth(), palette);
    }
  }

  /** What the pieces are coloured by. */
  public Quantity colouredBy() {
    return measured.now().quantity();
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
    Optional<Rise> rise = rise(pointer);
    if (rise.isPresent()) {
      return rise.map(r -> r.name() + "\n" + r.gestures());
    }
    return hit(pointer)
        .map(this::describe)
        .or(() -> showsMarks() ? hoop(pointer).map(h -> HOOP) : Optional.empty());
  }

  private Optional<Picking.Hit> hit(Point at) {
    return Picking.hit(solid(), orbit(), at.x, at.y, getWidth(), pictureHeight());
  }

  /** Finger and pieces, as far as they are shown. */
  private List<SceneItem> solid() {
    List<SceneItem> solid = new ArrayList<>();
    for (SceneItem item : SceneContents.of(design, colours.now(), choice, palette)) {
      if (item.shape() == design.skin() || piece(item) >= 0) {
        solid.add(item);
      }
    }
    return solid;
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
    boolean told = piece >= 0 && !colouring.values().isEmpty() && !colouring.isPassing();
    if (!told || colouring.colours().get(piece).isEmpty()) {
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
      if (!ruler.isOn()) {
        boolean marked = design != null && showsMarks();
        boolean held = marked && (hoop(pointer).isPresent() || rise(pointer).isPresent());
        setCursor(Cursor.getPredefinedCursor(held ? Cursor.MOVE_CURSOR : Cursor.DEFAULT_CURSOR));
      }
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
      boolean click = pressed != null && pressed.distance(e.getPoint()) <= CLICK_SLOP;
      if (design != null && click && SwingUtilities.isLeftMouseButton(e)) {
        hit(e.getPoint()).ifPresent(hit -> clicked(hit, e.isControlDown()));
      }
    }

    private void clicked(Picking.Hit hit, boolean control) {
      if (ruler.isOn()) {
        ruler.take(spot(hit));
        repaint();
      } else if (control) {
        relieve(hit);
      } else {
        stationListener.accept(Stations.nearest(design.orthosis().digit(), onFinger(hit)));
      }
    }
  }
}
