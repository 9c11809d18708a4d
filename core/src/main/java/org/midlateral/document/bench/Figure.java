package org.midlateral.document.bench;

/**
 * A figure of the mechanics for the sheet.
 *
 * @param what it is, as the sheet names it
 * @param value the figure
 * @param low lower end of its band; NaN for none
 * @param high upper end of its band; NaN for none
 * @param unit of all three
 */
public record Figure(String what, double value, double low, double high, String unit) {}
