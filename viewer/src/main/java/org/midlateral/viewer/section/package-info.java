/**
 * The cross-section of finger and pieces at one station, as drawn flat.
 *
 * <p>Promise: what is shown is cut from the pieces' own meshes in the plane normal to the
 * centreline. Coordinates in that plane: y to +y, z dorsal, from the centreline, in mm. Input: a
 * made design and a station. Output: closed loops, gaps and section properties.
 */
package org.midlateral.viewer.section;
