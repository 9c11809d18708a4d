package org.midlateral.measurement.entry;

import org.midlateral.measurement.entry.Entry.Place;
import org.midlateral.measurement.key.InputKey;

/**
 * One value that was checked on its own.
 *
 * @param key which
 * @param number its number (mm for a length, degrees for an angle); NaN where it is a word
 * @param word its word; empty where it is a number
 * @param written as the user wrote it, with its unit
 * @param place where
 */
public record Setting(InputKey key, double number, String word, String written, Place place) {}
