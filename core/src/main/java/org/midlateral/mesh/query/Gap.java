package org.midlateral.mesh.query;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * The smallest gap between two surfaces and where it is.
 *
 * @param distance in mm; 0 where they meet
 * @param triangle of the first surface
 * @param otherTriangle of the other surface
 * @param point on the first surface (mm)
 * @param otherPoint on the other surface (mm)
 */
public record Gap(
    double distance, int triangle, int otherTriangle, Vector3D point, Vector3D otherPoint) {}
