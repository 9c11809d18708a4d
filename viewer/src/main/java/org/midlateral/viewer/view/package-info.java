/**
 * The finger and its pieces on the screen: turning, moving and pointing at them, with names, a
 * scale and a legend drawn over the picture.
 *
 * <p>Promise: what is written over a picture was placed for that very picture. Input: a made
 * design, a colouring and what is to be shown. Output: a Swing component, and the same as an image.
 */
package org.midlateral.viewer.view;
