/**
 * Whether a reference or a note looks like a name or a date that would tell who a person is.
 *
 * <p>Promise: a guess by form, with a list of ordinary words that are none; it cautions, it never
 * refuses. Input: {@link org.midlateral.measurement.entry.Setting}. Output: a {@link
 * org.midlateral.measurement.Finding}.
 */
package org.midlateral.measurement.privacy;
