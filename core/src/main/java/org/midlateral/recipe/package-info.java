/**
 * The recipe: the whole job in the order in which the data flows, each stage a value that stays at
 * hand.
 *
 * <p>measurements, digit surface, cut at the mid-lateral line, trough, relief, dorsal shell,
 * solids. Input: {@link org.midlateral.measurement.Order}. Output: {@link
 * org.midlateral.recipe.Orthosis}. Millimetres and radians.
 */
package org.midlateral.recipe;
