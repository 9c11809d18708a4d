/**
 * What holds the orthosis on the finger: elastic wrap, sleeve, adhesive tape, hook and loop.
 *
 * <p>Promise: lengths and girths come from the cut of the real solids and the skin, with the
 * closure lying taut over both. Inputs: {@link org.midlateral.digit.DigitSurface}, {@link
 * org.midlateral.solid.Solid}s, {@link org.midlateral.measurement.Design.ClosureDesign}. Output:
 * {@link org.midlateral.mechanics.closure.Closure}. Millimetres, newtons, pressure in MPa.
 *
 * <p>Pressure by Laplace's law, p = n T / (w r), for a round section of the same girth: on a
 * flattened or bony section the pressure is higher over the sharper curves. It does not clear a
 * pressure for use, and it does not say how far an elastic material stretches.
 */
package org.midlateral.mechanics.closure;
