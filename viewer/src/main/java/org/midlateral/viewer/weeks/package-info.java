/**
 * A course of visits: its charts and its verdict, and a form for one more visit.
 *
 * <p>Promise: the charts are those of the printed pages; a visit that is added is saved whole, or
 * not at all, before the curves grow. Input: a {@link org.midlateral.recipe.course.CourseFile}. It
 * shows what {@link org.midlateral.recipe.course.FollowUp} tells.
 */
package org.midlateral.viewer.weeks;
