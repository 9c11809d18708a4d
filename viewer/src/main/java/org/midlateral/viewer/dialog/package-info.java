/** What the viewer asks and says in windows of its own. */
package org.midlateral.viewer.dialog;
