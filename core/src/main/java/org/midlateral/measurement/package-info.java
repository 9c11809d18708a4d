/**
 * What was measured and what was chosen, as records, with the tables they draw on.
 *
 * <p>Output: {@link org.midlateral.measurement.Order}, of {@link
 * org.midlateral.measurement.Measurements} and {@link org.midlateral.measurement.Design}. Records
 * carry mm and radians. What is found about an order is a {@link
 * org.midlateral.measurement.Finding}, what is wrong with a file an {@link
 * org.midlateral.measurement.InputError}, and a design that cannot be made on its finger a {@link
 * org.midlateral.measurement.DesignRefused}, with one of {@link
 * org.midlateral.measurement.Refusals}. What has no answer is {@link
 * org.midlateral.measurement.NotComputable}.
 *
 * <p>Files are read in {@link org.midlateral.measurement.file}.
 */
package org.midlateral.measurement;
