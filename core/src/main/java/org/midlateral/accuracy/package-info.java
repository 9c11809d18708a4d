/**
 * How far what is made may be off what was asked for.
 *
 * <p>One class of numbers, {@link org.midlateral.accuracy.ErrorBudget}, that every other package
 * may know. It measures nothing and decides nothing: whoever makes a surface spends a share, and
 * whoever inspects one holds it against a bound.
 */
package org.midlateral.accuracy;
