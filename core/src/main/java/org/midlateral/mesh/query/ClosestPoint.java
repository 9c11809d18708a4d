package org.midlateral.mesh.query;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * The place of a surface that is nearest to a point.
 *
 * @param triangle the triangle it lies on
 * @param point the place (mm)
 * @param distance from the point asked about (mm)
 */
public record ClosestPoint(int triangle, Vector3D point, double distance) {}
