/**
 * Many orders in one run.
 *
 * <p>Promise: orders are read one after the other, made on all cores and told in their order, in
 * memory that does not grow with their number (a few bytes are kept of each reference); one bad
 * order never stops the rest. Each order has a folder of its own, with a record of what it was made
 * from, so that a run which was cut short goes on where it stopped, and an order is made again only
 * where its input, the formats asked for or the program changed. One folder takes one run at a
 * time.
 *
 * <p>Inputs: a table by RFC 4180 whose first row names keys, or a folder of measurement files.
 * Outputs: the orders' files and {@code batch-report.csv}. It writes no drawings and sheets.
 */
package org.midlateral.recipe.batch;
