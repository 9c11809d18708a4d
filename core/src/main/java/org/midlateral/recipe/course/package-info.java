/**
 * What a course of visits tells of the finger and of the piece it wears.
 *
 * <p>Promise: one verdict with its reasons, each from one row of {@link
 * org.midlateral.recipe.course.CourseRule}; the same whatever the order of the visits in the file,
 * the unit and the hand. Input: a {@link org.midlateral.measurement.course.Course}. Output: {@link
 * org.midlateral.recipe.course.FollowUp} and its documents. It compares, it orders nothing.
 */
package org.midlateral.recipe.course;
