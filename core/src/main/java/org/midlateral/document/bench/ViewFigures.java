package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.document.drawing.DimensionLine;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.LabelRoom;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Mark.TextLabel;
import org.midlateral.document.drawing.Pen;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.Loop;
import org.midlateral.mechanics.MeshCut;
import org.midlateral.mechanics.SectionPlane;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.solid.Solid;

/** The dimensioned views of the bench sheet, drawn to scale from the solids. */
final class ViewFigures {
  private static final double TYPE = 2.5;
  private static final double TITLE = 4.5;

  /** Of what hangs below the baseline, over the size of the type. */
  private static final double HANGS = 0.22;

  /** Room right of the section for its depth (mm). */
  private static final double BESIDE = 15;

  private static final double GREY = 0.88;
  private static final double LIGHTER = 0.95;

  /** How far a view reaches past the solids at the proximal end, in mm of the finger. */
  private static final double PAST = 2;

  private final Order order;
  private final DigitSurface digit;
  private final List<Solid> solids;
  private final Lengths lengths;
  private final List<Silhouette> silhouettes;

  ViewFigures(Order order, DigitSurface digit, List<Solid> solids) {
    this.order = order;
    this.digit = digit;
    this.solids = List.copyOf(solids);
    this.lengths = Lengths.ofARuler(order.measurements().unit());
    this.silhouettes = solids.stream().map(solid -> Silhouette.of(digit, solid)).toList();
  }

  /** A scale as it is written: of the drawing to the thing. */
  record Scale(double factor, String name) {}

  /** The largest scale at which a view fits a width (mm). */
  Scale scaleFor(double width) {
    double length = digit.pulpEnd() - solids.get(0).piece().outline().proximal() + PAST + 2;
    return List.of(new Scale(1, "1:1"), new Scale(0.75, "3:4"), new Scale(0.5, "1:2")).stream()
        .filter(scale -> scale.factor() * length <= width)
        .findFirst()
        .orElse(new Scale(0.4, "2:5"));
  }

  /** Seen from the side, the dorsum up, with the lengths. */
  Drawing side(Scale scale) {
    FigureView view = new FigureView("From the side", Views.fromTheSide(digit), scale);
    view.draw();
    return view.finish();
  }

  /** Seen from above, onto the dorsum. */
  Drawing above(Scale scale) {
    FigureView view = new FigureView("From above", Views.fromAbove(digit), scale);
    view.draw();
    boolean right = order.measurements().hand() == Hand.RIGHT;
    view.side(right ? "radial" : "ulnar", view.y(view.top) - 2, 1);
    view.side(right ? "ulnar" : "radial", view.y(view.low) + 0.6, -1);
    return view.finish();
  }

  /** One view while it is drawn. */
  private final class FigureView {
    private static final double FOOT = 12;
    final Sketch sketch = new Sketch();
    final String title;
    final Views views;
    final Scale scale;
    final List<List<PointMark>> pieces;
    final List<PointMark> skin;
    final double left;
    final double right;
    final double low;
    final double top;
    private double upper;

    FigureView(String title, Views views, Scale scale) {
      this.title = title;
      this.views = views;
      this.scale = scale;
      this.pieces = silhouettes.stream().map(views::outline).toList();
      this.skin = views.skin(solids.get(0).piece().outline().proximal() - PAST);
      List<PointMark> all = new ArrayList<>(skin);
      pieces.forEach(all::addAll);
      left = least(all, PointMark::x);
      right = -least(all, p -> -p.x());
      low = least(all, PointMark::y);
      top = -least(all, p -> -p.y());
    }

    double x(double mm) {
      return scale.factor() * (mm - left);
    }

    double y(double mm) {
      return FOOT + scale.factor() * (mm - low);
    }

    private List<PointMark> scaled(List<PointMark> line) {
      return line.stream().map(p -> new PointMark(x(p.x()), y(p.y()))).toList();
    }

    void draw() {
      for (int i = 0; i < pieces.size(); i++) {
        List<PointMark> outline = scaled(pieces.get(i));
        sketch.area(i == 0 ? GREY : LIGHTER, outline).stroke(Pen.EDGE, outline, true);
        if (i == 0) {
          sketch.stroke(Pen.FINE, scaled(views.innerEdge(solids.get(0))), true);
        }
      }
      sketch.stroke(Pen.GHOST, scaled(skin), false);
      PointMark pip = axis(digit.pipAxis());
      PointMark web = axis(0);
      lengths();
      name("PIP axis", pip);
      name("web", web);
    }

    /** Draws a line across at a station, and tells its upper end. */
    private PointMark axis(double station) {
      double reach = views.reach(station, silhouettes) + 2 / scale.factor();
      List<PointMark> line = scaled(views.across(station, reach));
      upper = Math.max(upper, line.get(0).y() + TYPE);
      sketch.stroke(Pen.AXIS, line, false);
      return line.get(0);
    }

    /** A name beside the upper end of its line. */
    private void name(String name, PointMark end) {
      List<TextLabel> places = new ArrayList<>();
      for (double down = 0; down < 4; down += 1) {
        PointMark right = new PointMark(end.x() + 0.8, end.y() - down);
        PointMark left = new PointMark(end.x() - 0.8, end.y() - down);
        places.add(new TextLabel(name, right, TYPE, false, Anchor.START, 0));
        places.add(new TextLabel(name, left, TYPE, false, Anchor.END, 0));
      }
      PointMark above = new PointMark(end.x(), end.y() + 0.8);
      places.add(new TextLabel(name, above, TYPE, false, Anchor.MIDDLE, 0));
      new LabelRoom(sketch).put(places);
    }

    /** The trough's ends from the PIP axis, and its whole length. */
    private void lengths() {
      TriangleMesh mesh = solids.get(0).mesh();
      double start = mesh.x(0);
      double end = start;
      for (int v = 1; v < mesh.vertexCount(); v++) {
        start = Math.min(start, mesh.x(v));
        end = Math.max(end, mesh.x(v));
      }
      double pip = digit.centre(digit.pipAxis()).getX();
      double first = FOOT - 5;
      double second = FOOT - 10;
      for (double at : new double[] {start, pip, end}) {
        sketch.line(Pen.FINE, x(at), (at == pip ? first : second) - 1, x(at), FOOT - 1);
      }
      DimensionLine.level(sketch, x(start), x(pip), first, text(pip - start));
      DimensionLine.level(sketch, x(pip), x(end), first, text(end - pip));
      DimensionLine.level(sketch, x(start), x(end), second, text(end - start));
    }

    /** A side's name beside the tip, as near to the finger as there is room. */
    void side(String name, double y, int outward) {
      List<TextLabel> places = new ArrayList<>();
      for (double off = 0; off < 3; off += 0.5) {
        for (double back = 1; back < 30; back += 1) {
          PointMark at = new PointMark(x(right) - back, y + outward * off);
          places.add(new TextLabel(name, at, TYPE, false, Anchor.END, 0));
        }
      }
      new LabelRoom(sketch).put(places);
    }

    Drawing finish() {
      double height = Math.max(y(top) + 1, upper) + TITLE;
      sketch.bold(title + ", " + scale.name(), 0, height - 3, TYPE + 0.3);
      return sketch.drawing(x(right) + 1, height);
    }
  }

  private String text(double millimetres) {
    return lengths.text(millimetres);
  }

  private static double least(List<PointMark> points, ToDoubleFunction<PointMark> value) {
    return points.stream().mapToDouble(value).min().orElseThrow();
  }

  /** The section at the PIP axis, enlarged as far as it fits a width (mm), seen from the tip. */
  Drawing section(double width) {
    double station = digit.pipAxis();
    List<List<List<PointMark>>> sections = sections(station);
    List<PointMark> worn = sections.stream().flatMap(List::stream).flatMap(List::stream).toList();
    Slice slice = digit.slice(station);
    double half = -least(worn, p -> -Math.abs(p.x()));
    double low = least(worn, PointMark::y);
    double top = -least(worn, p -> -p.y());
    double left = 4;
    Scale scale = enlargement(width - left - BESIDE, 2 * half);
    double twice = scale.factor();
    double foot = 7;
    Sketch sketch = new Sketch();
    for (int i = 0; i < solids.size(); i++) {
      for (List<PointMark> loop : sections.get(i)) {
        List<PointMark> line =
            loop.stream()
                .map(
                    p -> new PointMark(left + twice * (p.x() + half), foot + twice * (p.y() - low)))
                .toList();
        sketch.area(i == 0 ? GREY : LIGHTER, line).stroke(Pen.EDGE, line, true);
      }
    }
    List<PointMark> skin = new ArrayList<>();
    for (int i = 0; i < 120; i++) {
      double t = 2 * Math.PI * i / 120;
      skin.add(
          new PointMark(
              left + twice * (slice.halfWidth() * Math.sin(t) + half),
              foot + twice * (-slice.halfDepth() * Math.cos(t) - low)));
    }
    sketch.stroke(Pen.GHOST, skin, true);
    double centre = foot - twice * low;
    double right = left + 2 * twice * half;
    double middle = left + twice * half;
    sketch.line(Pen.AXIS, left - 3, centre, right + 3, centre);
    DimensionLine.level(sketch, left, right, 2.5, text(2 * half) + " wide");
    DimensionLine.upright(sketch, right + 4, foot, foot + twice * (top - low), text(top - low));
    double wall = solids.get(0).piece().wall();
    double crown = foot + twice * (slice.halfDepth() - low);
    sketch.text("skin", middle, crown - 3.6, TYPE, Anchor.MIDDLE, 0);
    boolean hand = order.measurements().hand() == Hand.RIGHT;
    double in = twice * (half - slice.halfWidth()) + 1.5;
    LabelRoom room = new LabelRoom(sketch);
    room.put(within(hand ? "ulnar" : "radial", left + in, centre + 1, 1));
    room.put(within(hand ? "radial" : "ulnar", right - in, centre + 1, -1));
    double sheet = foot + twice * wall / 2;
    List<TextLabel> walls = new ArrayList<>();
    for (double up = 7; up < centre - foot - TYPE; up += 1) {
      PointMark at = new PointMark(middle, foot + twice * wall + up);
      walls.add(new TextLabel("wall " + lengths.thin(wall), at, TYPE, false, Anchor.MIDDLE, 0));
    }
    room.put(walls)
        .ifPresent(
            label ->
                sketch.line(Pen.FINE, middle, sheet, middle, label.at().y() - TYPE * HANGS - 0.3));
    double height = Math.max(crown, foot + twice * (top - low)) + TITLE + 2;
    sketch.bold(
        "Section at the PIP axis, from the tip, " + scale.name(), 0, height - 3, TYPE + 0.3);
    return sketch.drawing(right + BESIDE, height);
  }

  /** Places for a side's name in the section, from the skin inward. */
  private static List<TextLabel> within(String name, double x, double y, int inward) {
    List<TextLabel> places = new ArrayList<>();
    for (double up = 0; up < 3; up += 0.5) {
      for (double in = 0; in < 4; in += 0.5) {
        PointMark at = new PointMark(x + inward * in, y + up);
        Anchor anchor = inward > 0 ? Anchor.START : Anchor.END;
        places.add(new TextLabel(name, at, TYPE, false, anchor, 0));
      }
    }
    return places;
  }

  private static Scale enlargement(double room, double width) {
    return List.of(new Scale(2, "2:1"), new Scale(1.5, "3:2"), new Scale(1.25, "5:4")).stream()
        .filter(scale -> scale.factor() * width <= room)
        .findFirst()
        .orElse(new Scale(1, "1:1"));
  }

  /** The section of each solid: its closed lines. */
  private List<List<List<PointMark>>> sections(double station) {
    SectionPlane plane = SectionPlane.at(digit, station);
    return solids.stream()
        .map(solid -> MeshCut.of(solid.mesh()).at(plane).stream().map(ViewFigures::line).toList())
        .toList();
  }

  private static List<PointMark> line(Loop loop) {
    List<PointMark> line = new ArrayList<>();
    for (int i = 0; i < loop.size(); i++) {
      line.add(new PointMark(loop.y(i), loop.n(i)));
    }
    return line;
  }
}
