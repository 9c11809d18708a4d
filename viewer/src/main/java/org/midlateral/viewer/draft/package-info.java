/**
 * The measurement file being edited, as typed.
 *
 * <p>Promise: whatever is typed is kept as it was written, right or wrong; a file that is saved
 * keeps its comments, order and layout wherever its values can be changed in place. Input: YAML or
 * edits by key path. Output: YAML for {@link org.midlateral.measurement.file.Orders}, which alone
 * judges it. Lengths stay in the unit they were typed in.
 */
package org.midlateral.viewer.draft;
