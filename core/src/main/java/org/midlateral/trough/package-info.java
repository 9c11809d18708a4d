/**
 * The trough: outline, gap to the skin, and wall.
 *
 * <p>Promise: the gap is at least clearance plus liner everywhere and continuous in its slopes.
 * Inner surface: skin + gap along the skin's normal; outer surface: inner + wall along the inner
 * surface's own normal. Input: outline and digit surface. Output: {@link
 * org.midlateral.piece.Piece}. Millimetres.
 *
 * <p>It does not mesh; a piece is a description that the solids are made from.
 */
package org.midlateral.trough;
