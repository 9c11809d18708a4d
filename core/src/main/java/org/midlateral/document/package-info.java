/**
 * Files: solids as STL and 3MF, pictures of them, and the way any file gets to the disk.
 *
 * <p>Promise: a file stands under its name only once it is whole, and is not replaced unless asked
 * for ({@link org.midlateral.document.WholeFile}); the same input gives the same bytes; both kinds
 * of solid file hold the same 32-bit floats.
 *
 * <p>Inputs are closed meshes in mm. Problems come as {@link org.midlateral.document.FileProblem}s,
 * one sentence with the path.
 *
 * <p>Sources: 3MF Core Specification 1.4.0 (3MF Consortium) and ECMA-376 part 2 for its package;
 * for binary STL the customary layout, which has no standard.
 *
 * <p>It does not judge what it writes: solids are to be audited first.
 */
package org.midlateral.document;
