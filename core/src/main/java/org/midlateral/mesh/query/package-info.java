/**
 * Questions asked of meshes: distances, gaps, intersections, and the audit of a closed surface.
 *
 * <p>Promise: whether triangles intersect is decided exactly; distances are computed in doubles.
 * Input: {@link org.midlateral.mesh.TriangleMesh}. Outputs: {@link
 * org.midlateral.mesh.query.BoundingVolumeHierarchy} and its answers, {@link
 * org.midlateral.mesh.query.MeshAudit} (G6 to G8). Millimetres, degrees.
 *
 * <p>It knows no finger and no piece, and mends nothing.
 */
package org.midlateral.mesh.query;
