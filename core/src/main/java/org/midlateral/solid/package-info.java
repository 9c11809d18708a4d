/**
 * Solids: each piece meshed as one closed, oriented triangle surface.
 *
 * <p>Promise: every edge is shared by exactly two triangles of opposite direction, by construction;
 * what the construction cannot promise is measured on every product, in {@code inspection}. Input:
 * {@link org.midlateral.piece.Piece}. Output: {@link org.midlateral.solid.Solid}. Millimetres.
 *
 * <p>How: the domain inside the finished edge is triangulated once in the plane, lifted to the
 * inner and to the outer surface, and closed by a half-round rim. General mesh booleans would take
 * some ten times as long and leave slivers.
 */
package org.midlateral.solid;
