package org.midlateral.measurement.course;

/**
 * One number that was read at a visit.
 *
 * @param time when
 * @param value in its own unit
 */
public record DatedReading(VisitTime time, double value) {}
