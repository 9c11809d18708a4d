/**
 * Files, and the way any file gets to the disk.
 *
 * <p>Promise: a file stands under its name only once it is whole, and is not replaced unless asked
 * for ({@link org.midlateral.document.WholeFile}); the same input gives the same bytes.
 *
 * <p>Problems come as {@link org.midlateral.document.FileProblem}s, one sentence with the path.
 */
package org.midlateral.document;
