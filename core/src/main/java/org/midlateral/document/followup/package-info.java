/**
 * The pages of a course: readings over the weeks, and what they come to.
 *
 * <p>Promise: one or two pages, readable in grey; symbols and labels tell lines apart. Input: plain
 * figures in the user's unit, and texts. Output: {@link
 * org.midlateral.document.followup.FollowUpPages}. It judges nothing.
 */
package org.midlateral.document.followup;
