package org.midlateral.document;

import java.awt.Color;
import org.midlateral.solid.TriangleMesh;

/**
 * A mesh to be drawn.
 *
 * @param mesh in mm
 * @param colour of its surface; less than full alpha lets what lies behind show through
 */
public record Figure(TriangleMesh mesh, Color colour) {}
