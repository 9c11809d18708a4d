/**
 * Numbers as colours.
 *
 * <p>Promise: one colour map, ordered in lightness, that reads the same to colour-blind viewers and
 * in grey; every use of it comes with a legend in units. Source: viridis, by N. Smith and S. van
 * der Walt (CC0), ten of its colours with straight lines between.
 */
package org.midlateral.viewer.colour;
