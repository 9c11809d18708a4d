/**
 * Data that every module reads and none owns: the table of keys, the materials, the cautions, the
 * schema of a measurement file, the version.
 *
 * <p>Promise: the resources are in the jar, UTF-8, and are read as text. Units and sources stand in
 * each file beside the values. Nothing is interpreted here; {@code org.midlateral.measurement}
 * gives the tables their meaning.
 */
package org.midlateral.shared;
