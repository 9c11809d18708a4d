/**
 * Triangulations of points of the plane by Delaunay's criterion: no circle through the corners of a
 * triangle holds a further point.
 *
 * <p>Promise: all signs are decided exactly for the coordinates as they stand, so that a result is
 * Delaunay without a tolerance, and the same for the same input. Coordinates have whatever unit the
 * caller's have; triangles are counter-clockwise.
 *
 * <p>It knows no finger and no piece.
 */
package org.midlateral.mesh.plane;
