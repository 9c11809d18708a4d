package org.midlateral.viewer.form;

/**
 * A change of a list in the measurement file.
 *
 * @param list its path
 * @param remove number of the item to take out, or -1 to add one
 */
public record ListChange(String list, int remove) {}
