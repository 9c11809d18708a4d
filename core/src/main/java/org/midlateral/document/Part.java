package org.midlateral.document;

import org.midlateral.solid.Pose;
import org.midlateral.solid.TriangleMesh;

/**
 * A solid with the name it goes by in files.
 *
 * @param name for example {@code trough}
 * @param mesh the closed surface (mm), as it sits on the finger
 * @param pose how it is turned to stand on a printer's bed; files without a bed leave it out
 */
public record Part(String name, TriangleMesh mesh, Pose pose) {
  /** A part that stands on the bed as it is. */
  public Part(String name, TriangleMesh mesh) {
    this(name, mesh, Pose.AS_IS);
  }
}
