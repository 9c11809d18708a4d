/**
 * The joint in the piece: at which angle an orthosis holds a PIP joint, what presses where on the
 * skin, and with what pull of the closure.
 *
 * <p><b>Promise.</b> {@link org.midlateral.mechanics.joint.HeldFinger} meshes and factors the
 * pieces once and then answers any closure ({@link org.midlateral.mechanics.joint.Fastening}), any
 * joint ({@link org.midlateral.mechanics.joint.JointMoment}) and any share of the modulus with a
 * {@link org.midlateral.mechanics.joint.JointAnswer}: the angle and what it comes from, the
 * pressure on each patch of skin, the three resultants, energies. Forces balance to 1e-9 of the
 * largest.
 *
 * <p><b>Inputs and units.</b> The finger's surface and its pieces before they are meshed, as drawn
 * for a right hand; constants of joint, skin, liner and bands from the key table. Millimetres, N,
 * MPa, radians inside; degrees in answers.
 *
 * <p><b>The model.</b> Rigid bones on a hinge under soft layers that only push; elastic shells free
 * to move; bands along the convex hull of finger and pieces. The least of the energy is found by
 * Newton's method with the touching springs as active set. What is left out, where the constants
 * come from, and what the model was held against stands in {@code core/JOINT.md}.
 *
 * <p>The figures are estimates, to compare designs with; they clear no piece for use.
 */
package org.midlateral.mechanics.joint;
