package org.midlateral.document.format;

import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.midlateral.mesh.TriangleMesh;

/**
 * A solid with the names it goes by in files.
 *
 * @param name of the part, for example {@code trough}; its files are named after it
 * @param title what a reader shows: whose part it is
 * @param mesh the closed surface (mm), as it sits on the finger
 * @param pose the turn by which it stands on a printer's bed; files without a bed leave it out
 */
public record NamedSolid(
    String name, String title, TriangleMesh mesh, AffineTransformMatrix3D pose) {
  /** A part that nobody owns. */
  public NamedSolid(String name, TriangleMesh mesh, AffineTransformMatrix3D pose) {
    this(name, name, mesh, pose);
  }
}
