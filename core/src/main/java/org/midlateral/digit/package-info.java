/**
 * The digit surface: the skin of one finger from its measurements.
 *
 * <p>Promise: the section's perimeter at every measured level is the tape's circumference; between
 * neighbouring levels it is monotone; the surface is continuous in its tangent planes up to the end
 * of the pulp. Input: {@link org.midlateral.measurement.Measurements}. Output: {@link
 * org.midlateral.digit.DigitSurface}, points and derivatives by station and girth. Millimetres and
 * radians throughout.
 *
 * <p>Frame: right-handed; x distal along the straight finger's centreline, 0 at the web level; z
 * dorsal; y = z × x.
 *
 * <p>Sources: F. N. Fritsch and R. E. Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246; NIST Digital
 * Library of Mathematical Functions, sections 19.4, 19.9 and 19.30.
 *
 * <p>It does not know of any piece, and does not model soft tissue giving way.
 */
package org.midlateral.digit;
