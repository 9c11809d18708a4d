/**
 * The text of a measurement file, taken apart into entries with their lines.
 *
 * <p>Promise: YAML 1.2 (or JSON) within limits on size and nesting; what cannot be read is told
 * with its line. Lengths may be written with fractions and units of their own. Output: {@link
 * org.midlateral.measurement.entry.Entry}.
 *
 * <p>It does not know which keys there are.
 */
package org.midlateral.measurement.entry;
