/**
 * The viewer: one window on one measurement file.
 *
 * <p>Packages, each using only earlier ones: draft (the file as typed), background (newest-only
 * work), colour, render (off-screen pictures), scene (a made design as shapes), section, sample,
 * view (pictures on the screen), lesson, form, window. It measures and makes nothing itself: that
 * is the library's.
 */
package org.midlateral.viewer;
