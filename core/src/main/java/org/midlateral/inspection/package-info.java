/**
 * What is measured on a finished solid against what it was made to be: G2 to G4 and G9.
 *
 * <p>Promise: every figure is measured on the mesh as it will stand in the file, never inferred
 * from how it was made. Input: {@link org.midlateral.solid.Solid}. Output: {@link
 * org.midlateral.inspection.Conformance}. Millimetres.
 *
 * <p>Whether a design may be written is for the recipe to say.
 */
package org.midlateral.inspection;
