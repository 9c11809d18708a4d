package org.midlateral.recipe;

/** Adds up where the time goes. */
public final class Stopwatch {
  private long last = System.nanoTime();
  private double geometry;
  private double checks;

  public void geometryEnds() {
    geometry += lap();
  }

  public void checksEnd() {
    checks += lap();
  }

  /** What was counted so far, in milliseconds; nothing drawn or written yet. */
  public Report.Timing timing() {
    return new Report.Timing(geometry, checks, 0, 0);
  }

  private double lap() {
    long now = System.nanoTime();
    double passed = (now - last) / 1e6;
    last = now;
    return passed;
  }
}
