package org.midlateral;

/**
 * How much a test does that could go on for ever: little in every build, its full count under
 * {@code mvn -Plong}. Such tests have the tag {@value #TAG} and ask the same either way.
 */
public final class LongRun {
  /** Tag of the tests that a long run consists of. */
  public static final String TAG = "long";

  private static final boolean LONG = Boolean.getBoolean("midlateral.long");

  private LongRun() {}

  /** The one number in every build, the other in a long run. */
  public static int count(int usual, int full) {
    return LONG ? full : usual;
  }
}
