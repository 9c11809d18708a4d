package org.midlateral.measurement;

import org.midlateral.measurement.Entry.Place;

/**
 * One value that was checked on its own.
 *
 * @param key which
 * @param number its number (mm for a length, degrees for an angle); NaN where it is a word
 * @param word its word; empty where it is a number
 * @param written as the user wrote it, with its unit
 * @param place where
 */
record Setting(Key key, double number, String word, String written, Place place) {}
