/**
 * What is read of one finger from visit to visit.
 *
 * <p>Promise: a {@link org.midlateral.measurement.course.Course} holds the order its first piece
 * was made from and its visits by time, each with what was read; what was not read is empty. Angles
 * in degrees, as a goniometer shows them: they are compared and shown. Lengths in mm.
 */
package org.midlateral.measurement.course;
