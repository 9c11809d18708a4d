/**
 * Closed triangle surfaces, and the checker that runs on every one of them.
 *
 * <p>Promise: {@link org.midlateral.solid.MeshAudit} judges a solid as it will stand in a file,
 * with coordinates rounded to 32-bit floats, and decides exactly whether it is closed (G6) and
 * meets itself (G7): a filtered determinant, without rounding where the filter cannot tell. {@link
 * org.midlateral.solid.MeshTree} answers nearness: from points (G4), between surfaces (G3, G5).
 *
 * <p>Inputs and outputs are indexed meshes in mm; distances in mm, areas in mm², volumes in mm³,
 * angles in degrees. Distances are computed in doubles.
 *
 * <p>Sources: J. R. Shewchuk, Discrete and Computational Geometry 18 (1997) 305-363, for the exact
 * determinants; C. Ericson, Real-Time Collision Detection (2005), for nearest points.
 *
 * <p>It mends nothing: a mesh that fails is for its maker to put right. It does not see whether one
 * shell lies inside another.
 */
package org.midlateral.solid;
