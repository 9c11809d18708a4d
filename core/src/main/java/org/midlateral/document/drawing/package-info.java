/**
 * Line drawings in mm, and their files: PDF pages, SVG and DXF.
 *
 * <p>Promise: one millimetre of a {@link org.midlateral.document.drawing.Drawing} is one millimetre
 * on paper and in the file; the same drawing gives the same bytes. y grows upward. Pens tell cut,
 * fold and help lines apart by weight and dashes, never by colour.
 *
 * <p>It does not know what is drawn. The typeface is Roboto (Apache License 2.0, its text lies
 * beside the font files), embedded as a subset.
 *
 * <p>Sources: ISO 32000 (72 points an inch in a PDF), CSS 2 (96 pixels an inch in an SVG), the
 * group codes of the DXF reference, release 12.
 */
package org.midlateral.document.drawing;
