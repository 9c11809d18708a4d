package org.midlateral.measurement;

/** The digits that have a PIP joint; a thumb has none. */
public enum Digit {
  INDEX,
  MIDDLE,
  RING,
  LITTLE
}
