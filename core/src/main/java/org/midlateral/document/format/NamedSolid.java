package org.midlateral.document.format;

import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.midlateral.mesh.TriangleMesh;

/**
 * A solid with the name it goes by in files.
 *
 * @param name for example {@code trough}
 * @param mesh the closed surface (mm), as it sits on the finger
 * @param pose the turn by which it stands on a printer's bed; files without a bed leave it out
 */
public record NamedSolid(String name, TriangleMesh mesh, AffineTransformMatrix3D pose) {}
