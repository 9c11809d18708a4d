/**
 * Numbers as colours.
 *
 * <p>Promise: colour maps that read the same to colour-blind viewers, one ordered in lightness for
 * quantities that begin somewhere, one with its lightest in the middle for quantities with a sign;
 * every use of them comes with a legend in units. Sources: viridis, by N. Smith and S. van der Walt
 * (CC0), ten of its colours; cool to warm, computed at nine places as K. Moreland, Diverging Color
 * Maps for Scientific Visualization, ISVC 2009, describes; straight lines between.
 */
package org.midlateral.viewer.colour;
