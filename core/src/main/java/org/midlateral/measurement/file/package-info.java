/**
 * Reads and writes measurement files.
 *
 * <p>In: a YAML 1.2 (or JSON) text and overrides. Out: an {@link org.midlateral.measurement.Order}
 * whose every value lies in the range that the key table allows, or all errors at once, each with
 * file, line, key, value and what is allowed. Values outside the usual range come with cautions.
 * Files carry mm, cm or inches, and degrees; records carry mm and radians.
 *
 * <p>Not here: whether the design can be made on that finger. That is for the geometry to say.
 */
package org.midlateral.measurement.file;
