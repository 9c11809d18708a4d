package org.midlateral.recipe.record;

/**
 * What a laboratory reckons with, of all pieces of an order together.
 *
 * @param material title of it
 * @param mass (g)
 * @param volume (mm³)
 * @param height of the highest piece in its pose on the bed (mm)
 * @param support area that needs support in that pose (mm²)
 */
public record MakingFigures(
    String material, double mass, double volume, double height, double support) {}
