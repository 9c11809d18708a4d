package org.midlateral.mechanics.finite;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A node that has no freedoms of its own: it follows three others, the corners of a triangle of
 * another layer to which it is bonded. It turns as they do in the mean, and moves by
 *
 * <pre>sum of weight (displacement + rotation x arm)</pre>
 *
 * with the arm half of the way from the leader to the foot in the triangle, and the whole of the
 * way from the foot to the node. With the half, the motion is exact for every even bending and
 * stretching of the triangle, not only for rigid motions, so that the bonded layer is not stiffened
 * by its ties.
 *
 * @param node that follows
 * @param leaders the three nodes that it follows
 * @param weights of the three at the foot; their sum is 1
 * @param arms of the three (mm)
 */
public record Tie(int node, int[] leaders, double[] weights, List<Vector3D> arms) {}
