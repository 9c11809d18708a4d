/**
 * Work that takes its time: who asked for it may call it off.
 *
 * <p>Promise: once a thread is interrupted, what it asked for ends between two steps, on whatever
 * threads it is done; what was computed so far is dropped. Knows nothing of fingers.
 */
package org.midlateral.work;
