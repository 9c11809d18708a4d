/**
 * How a solid is turned on a printer's bed.
 *
 * <p>Promise: of a fixed set of directions the one with the least area to be supported, an area of
 * the skin side counting five-fold; of those nearly as good the broadest footing or the lowest.
 * Input: {@link org.midlateral.solid.Solid}. Output: {@link org.midlateral.pose.PrintPose}.
 * Millimetres, radians.
 *
 * <p>It makes no supports and no layers; that is the slicing program's work.
 */
package org.midlateral.pose;
