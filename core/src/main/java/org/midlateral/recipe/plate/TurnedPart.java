package org.midlateral.recipe.plate;

import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;

/**
 * A part turned about the upright.
 *
 * @param part which
 * @param turn from the finger's frame
 * @param footprint it has then
 */
record TurnedPart(PlatePart part, AffineTransformMatrix3D turn, Footprint footprint) {}
