package org.midlateral.recipe.plate;

import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.document.format.NamedSolid;

/**
 * A part in its place.
 *
 * @param turned as it lies
 * @param x cells from the left margin
 * @param y cells from the front margin
 * @param base it lies on, over the bed (mm)
 */
record LaidPart(TurnedPart turned, int x, int y, double base) {
  /** From the finger's frame to its place on the bed (mm). */
  AffineTransformMatrix3D place(double margin) {
    Footprint print = turned.footprint();
    return AffineTransformMatrix3D.createTranslation(
            Vector3D.of(
                margin + x * Footprint.CELL - print.lowX(),
                margin + y * Footprint.CELL - print.lowY(),
                base - turned.part().heights()[0]))
        .multiply(turned.turn());
  }

  /** For a file, in its place. */
  NamedSolid solid(double margin) {
    NamedSolid solid = turned.part().solid();
    return new NamedSolid(solid.name(), solid.title(), solid.mesh(), place(margin));
  }
}
