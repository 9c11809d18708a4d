package org.midlateral.document.format;

import org.midlateral.mesh.TriangleMesh;
import org.midlateral.pose.Pose;

/**
 * A solid with the name it goes by in files.
 *
 * @param name for example {@code trough}
 * @param mesh the closed surface (mm), as it sits on the finger
 * @param pose how it is turned to stand on a printer's bed; files without a bed leave it out
 */
public record NamedSolid(String name, TriangleMesh mesh, Pose pose) {
  /** A part that stands on the bed as it is. */
  public NamedSolid(String name, TriangleMesh mesh) {
    this(name, mesh, Pose.AS_IS);
  }
}
