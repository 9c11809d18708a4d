/** The invented samples that come with the program, to start on without a file of one's own. */
package org.midlateral.viewer.sample;
