package org.midlateral.inspection;

/**
 * Least, mean and largest of a measured quantity.
 *
 * @param min in mm
 * @param mean in mm, weighted by area where it is of a surface
 * @param max in mm
 */
public record Spread(double min, double mean, double max) {}
