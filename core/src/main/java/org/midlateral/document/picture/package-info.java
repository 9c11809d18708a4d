/**
 * Pictures of meshes, drawn without a display.
 *
 * <p>Promise: the same meshes and viewpoint give the same pixels. Input: meshes in mm with colours.
 * Output: {@link org.midlateral.document.picture.Picture}.
 */
package org.midlateral.document.picture;
