package org.midlateral.viewer.view;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.measurement.Design;
import org.midlateral.viewer.drawing.Palette;
import org.midlateral.viewer.render.Orbit;
import org.midlateral.viewer.render.Projection;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.PieceShape;

/** Draws the footprints of rises on what lies over them, where it is turned to the eye. */
record RisePainter(
    DesignShapes design,
    DisplayChoice choice,
    Orbit orbit,
    int width,
    int height,
    Palette palette) {
  /** Off the surface it is drawn on (mm). */
  private static final double LIFT = 0.4;

  /** Of the normal toward the eye, under which a place is turned away. */
  private static final double TURNED = 0.05;

  void draw(Graphics2D g, Rise rise, boolean chosen) {
    boolean dorsal =
        Math.abs(rise.shape().girth())
            > design.orthosis().digit().circumference(rise.shape().station()) / 4;
    Optional<PieceShape> over =
        design.pieces().stream()
            .filter(piece -> piece.isDorsal() == dorsal)
            .filter(piece -> choice.of(part(dorsal)) != PartVisibility.HIDDEN)
            .findFirst();
    double off =
        LIFT + over.map(piece -> thickness(dorsal) + rise.shape().height() / 4).orElse(0.0);
    Vector3D pulled =
        over.map(piece -> SceneContents.pulled(design, piece, choice.pull())).orElse(Vector3D.ZERO);
    Projection projection = orbit.projection(width, height);
    Path2D path = new Path2D.Double();
    boolean drawing = false;
    for (Rise.OutlinePoint point : rise.outline()) {
      boolean seen = point.normal().dot(orbit.toEye()) > TURNED;
      Vector3D at = projection.of(point.skin().add(off, point.normal()).add(pulled));
      if (seen && drawing) {
        path.lineTo(at.getX(), at.getY());
      } else if (seen) {
        path.moveTo(at.getX(), at.getY());
      }
      drawing = seen;
    }
    // The pair is there of itself, and as large as the joint: it is drawn more lightly.
    float line = chosen ? 2.5f : rise.isOfPair() ? 1 : 1.5f;
    g.setColor(palette.card());
    g.setStroke(new BasicStroke(2 * line + (rise.isOfPair() ? 0 : 0.5f)));
    g.draw(path);
    g.setColor(palette.axis());
    g.setStroke(new BasicStroke(line));
    g.draw(path);
    g.setStroke(new BasicStroke(1));
  }

  private static ViewPart part(boolean dorsal) {
    return dorsal ? ViewPart.SHELL : ViewPart.TROUGH;
  }

  /** From the skin to a piece's outer surface, without the rise (mm). */
  private double thickness(boolean dorsal) {
    Design all = design.orthosis().order().design();
    return dorsal
        ? all.dorsalShell().clearance() + all.dorsalShell().wall().orElse(all.trough().wall())
        : all.trough().clearance() + all.trough().liner() + all.trough().wall();
  }
}
