/**
 * Pictures of the pieces, drawn off screen.
 *
 * <p>Promise: a {@link org.midlateral.viewer.render.PictureRequest} says all that is in a frame, so
 * that no frame shows half of a change; of several asked for at once only the newest is drawn.
 * Input: triangle surfaces in mm, and from where they are seen. Output: {@link
 * org.midlateral.viewer.render.RenderedFrame}, pixels with the view they were drawn for. One
 * renderer lives in a process.
 *
 * <p>It knows nothing of fingers or orthoses, and draws no text.
 */
package org.midlateral.viewer.render;
