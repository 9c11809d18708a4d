/**
 * The record of making: what an order's files were made from and by, and what they are.
 *
 * <p>Promise: who has the folder can tell from {@code record.json} every input as it was
 * understood, the program and the Java it ran on, and whether each file is still as it was made. A
 * record is sealed by a digest of itself, so that a change in it is found as one in a file is.
 *
 * <p>Inputs: an order, its files. Outputs: {@code record.json}, by the schema {@code
 * making-record.schema.json}, and what {@code verify} tells.
 */
package org.midlateral.recipe.record;
