/**
 * The one table of all keys of a measurement file, and how values are shown to a person.
 *
 * <p>Promise: ranges, defaults, units, comments and sources of every key come from {@code
 * shared/keys.yaml} alone. Output: {@link org.midlateral.measurement.key.KeyTable}. Lengths in mm,
 * angles in degrees, as in the table.
 */
package org.midlateral.measurement.key;
