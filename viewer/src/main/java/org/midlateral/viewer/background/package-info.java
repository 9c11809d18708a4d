/**
 * Work off the screen's thread, of which only the newest counts.
 *
 * <p>Promise: what is asked for last is always done; what was asked before and has not begun is
 * dropped, and what has begun can be called off; answers come back in the order of asking, and none
 * about a subject that was forgotten.
 */
package org.midlateral.viewer.background;
