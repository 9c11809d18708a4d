package org.midlateral.recipe;

/** Adds up where the time goes. */
final class Stopwatch {
  private long last = System.nanoTime();
  private double geometry;
  private double checks;

  void geometryEnds() {
    geometry += lap();
  }

  void checksEnd() {
    checks += lap();
  }

  /** What was counted so far, in milliseconds; nothing drawn or written yet. */
  Report.Timing timing() {
    return new Report.Timing(geometry, checks, 0, 0);
  }

  private double lap() {
    long now = System.nanoTime();
    double passed = (now - last) / 1e6;
    last = now;
    return passed;
  }
}
