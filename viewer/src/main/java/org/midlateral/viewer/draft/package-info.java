/**
 * The measurement file being edited, as typed.
 *
 * <p>Promise: whatever is typed is kept as it was written, right or wrong; reading and writing a
 * file loses nothing but comments and layout. Input: YAML or edits by key path. Output: YAML for
 * {@link org.midlateral.measurement.file.Orders}, which alone judges it. Lengths stay in the unit
 * they were typed in.
 */
package org.midlateral.viewer.draft;
