/**
 * The flat pattern: the blank to cut from a cold sheet, the trimmed trough unrolled as a template,
 * and the strips of paper that carry the mid-lateral marks over to the finger.
 *
 * <p>Promise: everything is at true size. Lengths in the flat sheet are those of its middle
 * surface, which neither stretches nor shrinks when the sheet is bent. Inputs: measurements,
 * design, {@link org.midlateral.digit.DigitSurface}, the trough's {@link
 * org.midlateral.solid.Solid}. Outputs: polygons and drawings, x along the girth and y along the
 * stations (mm), seen from outside.
 *
 * <p>Unrolling: as-rigid-as-possible, by alternating local rotations and one global solve (Liu,
 * Zhang, Xu, Gotsman and Gortler, A local/global approach to mesh parameterization, Computer
 * Graphics Forum 27(5) (2008) 1495-1504, from memory). A cylinder and a cone unroll exactly; where
 * the joint bulges the sheet must stretch, and {@link org.midlateral.document.pattern.Unrolled}
 * says how much and where.
 *
 * <p>The blank is for moulding on the skin: liner and sheet are counted, a printed piece's
 * clearance is not.
 */
package org.midlateral.document.pattern;
