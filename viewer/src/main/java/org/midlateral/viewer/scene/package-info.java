/**
 * A design as it is shown: the finger, its levels and its pieces as shapes, and what they are
 * coloured by.
 *
 * <p>Promise: a {@link org.midlateral.viewer.scene.MadeDraft} is whole before anyone sees it.
 * Input: {@link org.midlateral.viewer.draft.Draft}. Output: shapes in mm in the frame of the
 * finger, values at each vertex with their unit. Nothing here knows of windows.
 */
package org.midlateral.viewer.scene;
