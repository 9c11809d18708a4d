package org.midlateral.viewer.view;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.viewer.drawing.Compass;
import org.midlateral.viewer.drawing.NoteCard;
import org.midlateral.viewer.drawing.Palette;
import org.midlateral.viewer.drawing.ScaleBar;
import org.midlateral.viewer.render.Orbit;
import org.midlateral.viewer.render.SceneItem;
import org.midlateral.viewer.scene.DesignShapes;

/**
 * What is written over the picture of a finger: whose it is, scale and directions, a note, names.
 *
 * @param solid finger and pieces as they are shown
 * @param beside a design that is kept beside it, as it is shown
 * @param middles of the design that is kept and of this one, where there are two
 * @param note to be said; empty for nothing
 * @param rises those of the design
 * @param chosen number of the rise that was touched last
 */
record FingerOverlay(
    DesignShapes design,
    List<SceneItem> solid,
    List<SceneItem> beside,
    Optional<Middles> middles,
    DisplayChoice choice,
    Palette palette,
    String note,
    List<Rise> rises,
    OptionalInt chosen,
    Orbit orbit,
    int width,
    int height) {
  /** From the picture's edges to a note, and heights of the title and the scale (px). */
  private static final int EDGE = 12;

  private static final int UNDER_TITLE = 32;

  /** A word makes way by such steps (px), so many at most. */
  private static final int STEP = 4;

  private static final int MOST_STEPS = 20;

  private static final int OVER_SCALE = 40;

  /** Of two designs side by side (mm). */
  record Middles(Vector3D kept, Vector3D now) {}

  void draw(Graphics2D g) {
    List<Rectangle2D> taken = new ArrayList<>();
    taken.add(title(g));
    taken.add(ScaleBar.draw(g, orbit, width, height, palette));
    taken.add(
        Compass.draw(
            g, orbit, design.orthosis().order().measurements().hand(), width, height, palette));
    List<Rectangle2D> barrier = CoveredStrips.of(beside, orbit, width, height);
    List<Rectangle2D> covered = CoveredStrips.of(solid, orbit, width, height);
    if (!note.isEmpty()) {
      List<Rectangle2D> all = new ArrayList<>(taken);
      all.addAll(barrier);
      all.addAll(covered);
      taken.add(note(g, all));
    }
    middles.ifPresent(
        both -> {
          taken.add(card(g, "Kept", level(both.kept()), taken));
          taken.add(card(g, "Now", level(both.now()), taken));
        });
    if (choice.of(ViewPart.MARKS) != PartVisibility.HIDDEN) {
      RisePainter painter = new RisePainter(design, choice, orbit, width, height, palette);
      rises.forEach(rise -> painter.draw(g, rise, chosen.equals(OptionalInt.of(rise.number()))));
      new LandmarkLabels(orbit, width, height, palette, taken, barrier, covered)
          .draw(g, design.landmarks());
    }
  }

  /** A word at the left edge, at a height or as near to it as it covers nothing written there. */
  private Rectangle2D card(Graphics2D g, String word, double level, List<Rectangle2D> taken) {
    double free =
        IntStream.rangeClosed(0, 2 * MOST_STEPS)
            .mapToDouble(i -> level + (i % 2 == 0 ? -1 : 1) * STEP * ((i + 1) / 2))
            .filter(
                y -> taken.stream().noneMatch(NoteCard.place(g, word, EDGE, y, width)::intersects))
            .findFirst()
            .orElse(level);
    return NoteCard.draw(g, word, EDGE, free, width, palette);
  }

  private double level(Vector3D point) {
    return orbit.project(point, width, height).getY();
  }

  /** Whose finger this is. */
  private Rectangle2D title(Graphics2D g) {
    String text = design.title();
    FontMetrics font = g.getFontMetrics();
    g.setColor(palette.ink());
    g.drawString(text, EDGE, 8 + font.getAscent());
    return new Rectangle2D.Double(8, 4, font.stringWidth(text) + 10, font.getHeight() + 6);
  }

  /** The note where it hides nothing; where there is no such place, only how it begins. */
  private Rectangle2D note(Graphics2D g, List<Rectangle2D> all) {
    Optional<Point> free = freeCorner(g, all);
    String first = note.lines().findFirst().orElse("");
    String shown = free.isPresent() || first.equals(note) ? note : first + " ...";
    Point at = free.orElse(new Point(EDGE, UNDER_TITLE));
    return NoteCard.draw(g, shown, at.x, at.y, width, palette);
  }

  private Optional<Point> freeCorner(Graphics2D g, List<Rectangle2D> all) {
    Rectangle2D size = NoteCard.place(g, note, 0, 0, width);
    int right = (int) (width - size.getWidth()) - EDGE;
    int low = (int) (height - size.getHeight()) - EDGE;
    List<Point> corners =
        List.of(
            new Point(EDGE, UNDER_TITLE),
            new Point(right, UNDER_TITLE),
            new Point(right, EDGE),
            new Point(right / 2, low),
            new Point(EDGE, low - OVER_SCALE));
    return corners.stream()
        .filter(at -> at.x >= 0)
        .filter(
            at -> all.stream().noneMatch(NoteCard.place(g, note, at.x, at.y, width)::intersects))
        .findFirst();
  }
}
