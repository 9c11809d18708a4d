/**
 * Linear static analysis of thin and moderately thick shells by finite elements.
 *
 * <p><b>Promise.</b> Given a triangulated mid-surface with a wall thickness at each node, an
 * isotropic elastic material, nodal forces and moments, and enough prescribed displacements to hold
 * the body, the package gives each node's displacement and rotation, the reactions, the strain
 * energy, and the strains on both faces of the wall.
 *
 * <p><b>Inputs and units.</b> Any consistent set; Midlateral uses mm, N, MPa, N·mm and radians. Six
 * freedoms a node: displacements along and rotations about the global x, y and z axes. A triangle's
 * front face is the one from which its corners run counter-clockwise.
 *
 * <p><b>The element.</b> A flat triangle of 18 freedoms, chosen because all of its parts are
 * published, hold no tuning factor and need no stabilisation:
 *
 * <ul>
 *   <li>in its plane the optimal triangle with corner rotations, C. A. Felippa, "A study of optimal
 *       membrane triangles with drilling freedoms", Comput. Methods Appl. Mech. Engrg. 192 (2003)
 *       2125-2168: exact in bending in its plane, and the rotation about the normal carries real
 *       stiffness, so that flat neighbours leave no loose freedom;
 *   <li>across its plane the discrete Kirchhoff-Mindlin triangle, I. Katili, "A new discrete
 *       Kirchhoff-Mindlin element based on Mindlin-Reissner plate theory and assumed shear strain
 *       fields, part I", Int. J. Numer. Methods Engrg. 36 (1993) 1859-1883: shear flexible, free of
 *       locking, and equal to the discrete Kirchhoff triangle in the thin limit. A finger piece has
 *       a radius of only some six walls, so that shear is not left out.
 * </ul>
 *
 * The shell's curvature comes from the fold between neighbours, and its effect within the wall from
 * a parabola through each triangle's surroundings. The error falls with the square of the edge
 * length. The tables of published cases are in {@code core/FINITE-ELEMENTS.md}.
 *
 * <p><b>The equations.</b> The triangles are halved again and again, the shared nodes are
 * eliminated last (nested dissection), and each part is eliminated as a small dense matrix
 * (multifrontal Cholesky), the two halves of a part on two threads. A banded factorisation needs
 * twice the operations on a half tube and three times on a closed one, and EJML's sparse Cholesky
 * brings no ordering and no dense blocks.
 *
 * <p><b>What it does not do.</b> No large rotations, no buckling, no contact, no creep. The stress
 * through the wall is left out, so that just under a load spread over no more than a wall or two
 * the strains are not to be trusted, and small local movements there are some percent off.
 */
package org.midlateral.mechanics.finite;
