/**
 * The window: form, picture, section, findings and menus around one measurement file.
 *
 * <p>Promise: what is on the screen follows the newest draft; making and drawing run on threads of
 * their own, so that typing never waits for them. Everything the mouse does can be done by keys.
 */
package org.midlateral.viewer.window;
