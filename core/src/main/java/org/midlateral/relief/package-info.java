/**
 * Relief: local rises of the gap over sore collateral ligaments or any sore spot.
 *
 * <p>Promise: at a bubble's centre the gap is the piece's own plus the bubble's height; the rise is
 * smooth to its edge. Input: measurements and design. Output: a gap field that any piece may take
 * up, so that trough and dorsal shell share one bubble. Millimetres.
 */
package org.midlateral.relief;
