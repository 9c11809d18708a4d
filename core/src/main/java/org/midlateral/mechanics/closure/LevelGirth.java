package org.midlateral.mechanics.closure;

import org.midlateral.measurement.Level;

/**
 * The girth at a level with the orthosis worn.
 *
 * @param level of the finger
 * @param station (mm)
 * @param skin girth of the bare finger (mm)
 * @param worn girth over finger and orthosis (mm)
 */
public record LevelGirth(Level level, double station, double skin, double worn) {}
