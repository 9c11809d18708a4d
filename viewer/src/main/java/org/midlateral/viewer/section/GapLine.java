package org.midlateral.viewer.section;

/**
 * A gap between skin and piece at one place of a section.
 *
 * @param y of the skin (mm)
 * @param z of the skin (mm)
 * @param outY outward normal of the skin
 * @param outZ the same, dorsally
 * @param millimetres the gap
 */
public record GapLine(double y, double z, double outY, double outZ, double millimetres) {}
