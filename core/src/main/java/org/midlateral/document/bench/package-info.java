/**
 * What the therapist takes to the bench: the work sheet, the measuring form, and the flat pattern's
 * files.
 *
 * <p>Promise: three pages, everything drawn to scale from the solids, numbers in the unit the
 * measurements were given in. Inputs: {@link org.midlateral.measurement.Order}, digit surface,
 * relief, solids, and a few figures of the mechanics. Output: {@link
 * org.midlateral.document.bench.BenchDocuments}, files as bytes.
 *
 * <p>It compares and instructs; it clears nothing for use. Every page says so.
 */
package org.midlateral.document.bench;
