/**
 * The form: one row for every key of the key table, in its order, grouped by section.
 *
 * <p>Promise: a key added to the table appears without a change here; each row shows unit, usual
 * range and what is wrong at the field itself; every row is reached and changed by keys alone.
 * Input: a draft and what was found about it. Output: edits by key path.
 */
package org.midlateral.viewer.form;
