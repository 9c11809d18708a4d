package org.midlateral.document.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.midlateral.digit.DigitSurface;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.drawing.PageFrame;
import org.midlateral.document.drawing.Pen;
import org.midlateral.document.drawing.ScaleBars;
import org.midlateral.document.drawing.Typeface;
import org.midlateral.document.pattern.Unrolled.Distortion;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.closure.Strap;

/** The figures of a pattern, each at true size, and all of them on one sheet. */
public final class PatternDrawing {
  private static final double BORDER = 8;
  private static final double GAP = 8;
  private static final double TYPE = 2.5;
  private static final double LINE = 3.3;

  private final FlatPattern pattern;
  private final Order order;
  private final DigitSurface digit;
  private final List<Strap> straps;
  private final Lengths lengths;

  /**
   * The drawing of a pattern.
   *
   * @param straps to cut; none where the closure is another
   */
  public PatternDrawing(FlatPattern pattern, Order order, DigitSurface digit, List<Strap> straps) {
    this.pattern = pattern;
    this.order = order;
    this.digit = digit;
    this.straps = List.copyOf(straps);
    this.lengths = Lengths.ofARuler(order.measurements().unit());
  }

  /**
   * A figure and what it shows.
   *
   * @param description in one sentence
   * @param drawing at true size
   * @param notes what its maker should know, a paragraph each
   */
  public record Figure(String description, Drawing drawing, List<String> notes) {
    public Figure {
      notes = List.copyOf(notes);
    }
  }

  /** The unit that its bars are in. */
  LengthUnit unit() {
    return lengths.unit();
  }

  /** Blank, template, strips and straps. */
  public List<Figure> figures() {
    List<Figure> figures = new ArrayList<>();
    figures.add(
        new Figure(
            "The blank, at true size, with its levels and marks.",
            blank(),
            List.of(
                "Seen from outside, distal end upward. Cut the blank, transfer its lines to the"
                    + " sheet, lay it round the finger and pinch it along the dashed lines,"
                    + " dorsally. The thin line is where it is trimmed when it is cold."
                    + " Figures: from the midline to the mark.",
                why())));
    figures.add(
        new Figure(
            "The finished trough unrolled, at true size, to compare with.",
            TemplateFigure.of(pattern.template(), order.measurements(), pattern.marks(), lengths),
            List.of(template())));
    figures.add(
        new Figure(
            "Strips of paper to lay round the finger at each level.",
            StripFigure.of(pattern.marks(), lengths),
            List.of(
                "Strips: lay one round the finger at its level, the line \"volar\" on the volar midline;"
                    + " its ends must just meet dorsally"
                    + swelling()
                    + ", else measure again. The marks are where to cut. One set is for the skin,"
                    + " one for the moulded sheet.")));
    pattern.dorsal().ifPresent(blank -> figures.add(dorsal(blank)));
    if (!straps.isEmpty()) {
      figures.add(
          new Figure(
              "Two straps and their hook, at true size.",
              StrapFigure.of(straps, order.measurements().hand(), lengths),
              List.of(
                  "Straps: the distal edge is up, the loop side beneath. Fix the hook on the volar side,"
                      + " centred on the PIP axis and the midline. Lay each strap's end \"stays\" on its"
                      + " own quarter of the hook, flush with the hook's middle; it goes over the edge"
                      + " there, all the way round, and closes on the quarter with its number. Cut"
                      + " off what is too long, but leave "
                      + lengths.with(Strap.LEAST_LAP)
                      + " past the heavy mark.")));
    }
    return figures;
  }

  /** By how much the strips' ends pass each other on a finger that is not swollen. */
  private String swelling() {
    double allowed = order.measurements().room().swelling();
    return allowed > 0
        ? ", or pass each other by the " + lengths.with(allowed) + " allowed for swelling"
        : "";
  }

  /** Why the blank is wider than the finger. */
  private String why() {
    Blank blank = pattern.blank();
    double off = order.design().trough().liner() + blank.thickness();
    double more = 2 * Math.PI * off;
    return String.format(
        Locale.ROOT,
        "The blank is %s wide: the thickest girth, %s, with %s (2π times %s) because it is laid round"
            + " the outside of its own thickness, and %s to pinch.",
        lengths.with(blank.width()),
        lengths.with(blank.width() - more - Blank.PINCH),
        lengths.with(more),
        lengths.thin(off),
        lengths.with(Blank.PINCH));
  }

  private Figure dorsal(DorsalBlank blank) {
    return new Figure(
        "The blank for the dorsal piece by hand, at true size.",
        DorsalBlankFigure.of(blank, order.measurements().hand(), lengths),
        List.of(
            "Dorsal blank: seen from outside, distal end upward, centred over the PIP joint. Heavy: cut."
                + " Thin: the finished edge. Dashed: the trough's rims beneath; from there to the"
                + " finished edge it overlaps by "
                + lengths.with(order.design().dorsalShell().overlap())
                + "."));
  }

  private Drawing blank() {
    return BlankFigure.of(
        pattern.blank(),
        digit,
        order.measurements(),
        pattern.marks(),
        lengths,
        order.design().trough().liner() + pattern.blank().thickness() / 2);
  }

  /** Bars to check the print, with the pens explained between them. */
  Drawing key() {
    Drawing bars = ScaleBars.of(lengths.unit());
    Sketch sketch = new Sketch().add(bars, 0, 0);
    List<Pen> pens = List.of(Pen.CUT, Pen.EDGE, Pen.FOLD, Pen.AXIS, Pen.MARK);
    List<String> words =
        List.of("cut", "finished edge", "pinch or fold", "midline, web, axis", "mark: trim line");
    for (int i = 0; i < pens.size(); i++) {
      double y = 40 - 5.5 * i;
      if (pens.get(i) == Pen.MARK) {
        sketch.line(Pen.FINE, 11, y, 24, y).line(Pen.MARK, 17.5, y - 2, 17.5, y + 2);
      } else {
        sketch.line(pens.get(i), 11, y, 24, y);
      }
      sketch.text(words.get(i), 26.5, y - 0.9, TYPE);
    }
    return sketch.drawing(bars.width(), bars.height());
  }

  /** What a flat outline leaves to the hands that mould the sheet. */
  private String template() {
    Unrolled unrolled = pattern.template().unrolled();
    if (unrolled.bends()) {
      return "Template: bending alone takes it to the finger. Trace it, and mould it as it is.";
    }
    String why =
        unrolled.isTooFar()
            ? "Use the blank, not the template: a sheet that is cut to its outline beforehand does not"
                + " lie down on this finger. "
            : "Template: cut the blank, not this line. A warm sheet takes the finger's roundness when"
                + " you stroke it down with a wet finger and let it settle. ";
    return why
        + "Do not pull it thin "
        + place(unrolled.mostStretched())
        + " (circle). Where it puckers, "
        + place(unrolled.mostGathered())
        + " (cross), leave "
        + lengths.span(2, 3)
        + " beside the line and trim that last. Roll the finished trough over the template from"
        + " rim to rim: its edge should follow the line.";
  }

  private String place(Distortion d) {
    double from = d.station() - digit.pipAxis();
    String along =
        Math.abs(from) < 1
            ? "at the PIP axis"
            : lengths.with(Math.abs(from))
                + (from > 0 ? " distal" : " proximal")
                + " of the PIP axis";
    double across = Math.abs(d.girth());
    return along
        + (across < 2 ? " on the midline" : ", " + lengths.with(across) + " off the midline");
  }

  /** All figures on one sheet, for a cutter or a screen. */
  public Drawing sheet() {
    List<Figure> figures = figures();
    Drawing blank = figures.get(0).drawing();
    Drawing template = figures.get(1).drawing();
    double right = BORDER + blank.width() + GAP;
    double width = right + template.width();
    String foot = order.measurements().reference() + ". " + PageFrame.WARNING;
    List<String> lines = Typeface.REGULAR.wrapped(foot, TYPE, width - BORDER);
    double height = 2 * BORDER + (lines.size() - 1) * LINE;
    for (Figure figure : figures.subList(2, figures.size())) {
      width = Math.max(width, BORDER + figure.drawing().width());
      height += figure.drawing().height() + GAP;
    }
    Drawing key = key();
    double upper = Math.max(blank.height(), template.height() + GAP + key.height());
    height += upper;
    double top = height - BORDER;
    Sketch sketch = new Sketch();
    sketch.add(blank, BORDER, top - blank.height());
    sketch.add(template, right, top - template.height());
    sketch.add(key, right, top - upper);
    double y = top - upper;
    for (Figure figure : figures.subList(2, figures.size())) {
      y -= GAP + figure.drawing().height();
      sketch.add(figure.drawing(), BORDER, y);
    }
    for (int i = 0; i < lines.size(); i++) {
      sketch.text(lines.get(i), BORDER, 2.5 + (lines.size() - 1 - i) * LINE, TYPE);
    }
    return sketch.drawing(width + BORDER, height);
  }
}
