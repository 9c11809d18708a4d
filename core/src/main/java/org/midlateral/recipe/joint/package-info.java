/**
 * How one orthosis, as ordered, holds the joint: at which angle, what presses where, whether the
 * closure has the force, what is left after a night, and how far all that may be off.
 *
 * <p>Promise: {@link org.midlateral.recipe.joint.JointHeld} holds every figure once; {@link
 * org.midlateral.recipe.joint.JointWords} puts them in a therapist's words, the same in the
 * terminal, on the bench sheet and in the viewer. Input: {@link org.midlateral.recipe.Orthosis}.
 * Units: degrees, N, N·mm, MPa, mm. The model is that of {@code mechanics.joint}.
 */
package org.midlateral.recipe.joint;
