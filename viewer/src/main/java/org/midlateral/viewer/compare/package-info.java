/**
 * One design held against another.
 *
 * <p>Promise: the difference is told by the same figures as the report's, from both designs as they
 * are. Input: two made drafts. Output: a line of text.
 */
package org.midlateral.viewer.compare;
