package org.midlateral.mechanics.joint;

import org.midlateral.measurement.HoldingDesign;

/**
 * A closure laid, and the joint held by it.
 *
 * @param fitting of the pieces on the finger
 * @param pieces as they were factored
 * @param holding constants of skin and bands
 * @param laid where the pieces lay with the joint held by hand
 * @param system that holds it
 * @param resting where it rests
 */
record HeldState(
    Fitting fitting,
    PressedPieces pieces,
    HoldingDesign holding,
    Resting laid,
    HeldSystem system,
    Resting resting) {}
