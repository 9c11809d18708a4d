package org.midlateral.measurement;

/** One file read: what was measured and what was chosen. */
public record Order(Measurements measurements, Design design) {}
