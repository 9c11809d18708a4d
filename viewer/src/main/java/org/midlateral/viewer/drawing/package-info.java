/** The colours, and what is drawn flat: sections, scales, notes and the icon. */
package org.midlateral.viewer.drawing;
