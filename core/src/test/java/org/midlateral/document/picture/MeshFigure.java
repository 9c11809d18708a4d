package org.midlateral.document.picture;

import java.awt.Color;
import org.midlateral.mesh.TriangleMesh;

/**
 * A mesh to be drawn.
 *
 * @param mesh in mm
 * @param colour of its surface; less than full alpha lets what lies behind show through
 */
public record MeshFigure(TriangleMesh mesh, Color colour) {}
