/**
 * Solid files: STL, 3MF, OBJ, PLY and binary glTF.
 *
 * <p>Promise: all formats hold the same 32-bit floats; the same input gives the same bytes. Input:
 * {@link org.midlateral.document.format.SolidSet}, closed meshes in mm. Output: {@link
 * org.midlateral.document.Content}.
 *
 * <p>Sources: 3MF Core Specification 1.4.0 (3MF Consortium) and ECMA-376 part 2 for its package;
 * glTF 2.0 (Khronos Group); for STL, OBJ and PLY the customary layouts, which have no standard.
 *
 * <p>It does not judge what it writes: solids are to be audited first.
 */
package org.midlateral.document.format;
