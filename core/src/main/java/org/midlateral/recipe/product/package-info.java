/**
 * The main job: an order's solids made, inspected, reported and written.
 *
 * <p>Promise: nothing is written of a design that breaks a check. Input: {@link
 * org.midlateral.measurement.Order}. Output: {@link org.midlateral.recipe.product.Product} and its
 * files. Millimetres, N, MPa, g and degrees in the report.
 */
package org.midlateral.recipe.product;
