/**
 * The lesson: one finger, wraps from shallow to closed, side by side under one load.
 *
 * <p>Promise: every piece shown is a real mesh of the same finger, its figures are the library's,
 * and all deflections are drawn to one exaggerated scale: those of the shell finite elements, or a
 * beam's where they cannot be had, and it says which. Input: an order. Output: a component with
 * steps that go forward and back. Deflections in mm, angles in degrees.
 */
package org.midlateral.viewer.lesson;
