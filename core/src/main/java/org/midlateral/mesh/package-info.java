/**
 * Triangle meshes: their data, how they hang together, and the exact signs they are judged by.
 *
 * <p>Promise: a {@link org.midlateral.mesh.TriangleMesh} is immutable, in mm, its triangles
 * counter-clockwise seen from outside; orientation is decided exactly for the coordinates as they
 * stand (J. R. Shewchuk, "Adaptive precision floating-point arithmetic and fast robust geometric
 * predicates", Discrete Comput. Geom. 18 (1997) 305-363).
 *
 * <p>It knows no finger and no piece.
 */
package org.midlateral.mesh;
