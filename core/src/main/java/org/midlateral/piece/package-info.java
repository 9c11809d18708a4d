/**
 * A piece before it is meshed: what trough and dorsal shell have in common.
 *
 * <p>Promise: {@link org.midlateral.piece.Piece} holds all that makes a solid: skin, outline, the
 * {@link org.midlateral.piece.GapField} from skin to inner surface, wall, and what is raised on the
 * outside. Gap fields are continuous in their slopes. Millimetres and radians.
 *
 * <p>It does not mesh; a piece is a description that solids are made from.
 */
package org.midlateral.piece;
