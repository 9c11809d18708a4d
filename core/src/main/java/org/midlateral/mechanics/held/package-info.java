/**
 * A finger's piece as a shell under the three forces that hold a joint.
 *
 * <p>Promise: {@link org.midlateral.mechanics.held.FingerShell} makes the mid-surface of a trough,
 * or of a trough with its dorsal shell bonded on; {@link org.midlateral.mechanics.held.HeldJoint}
 * is the load case; {@link org.midlateral.mechanics.held.HeldShell} solves it, and its {@link
 * org.midlateral.mechanics.held.HeldAnswer} holds the figures. Millimetres, N, N·mm, degrees where
 * said.
 *
 * <p>The figures are estimates, to compare designs with; they clear no piece for use.
 */
package org.midlateral.mechanics.held;
