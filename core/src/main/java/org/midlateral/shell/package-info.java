/**
 * The dorsal overlap shell: the second piece, whose long edges lie outside the trough's, so that
 * the two make one closed tube.
 *
 * <p>Promise: between the outside of the trough and the inside of the shell there is at least the
 * fit gap (G5); the shell shares the trough's reliefs; it is never proximal of the web clearance.
 * Input: the relieved trough and the design. Output: a {@link org.midlateral.piece.Piece} whose
 * outline counts its girth from the dorsal midline, and the figures of its going on. Millimetres.
 */
package org.midlateral.shell;
