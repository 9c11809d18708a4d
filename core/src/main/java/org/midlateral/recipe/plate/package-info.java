/**
 * Parts of many orders on one bed, or in one volume of powder.
 *
 * <p>Promise: every part stands in the pose that its report tells, turned about the upright only;
 * no two come nearer to each other than the machine's spacing, none to the bed's edge nearer than
 * its margin; what is not as it was made is left out and told. Inputs: folders that {@code make} or
 * {@code batch} wrote, a machine's profile. Outputs: a 3MF for each plate with the parts under
 * their names, and a PDF that tells whose part lies where. Millimetres, degrees.
 */
package org.midlateral.recipe.plate;
