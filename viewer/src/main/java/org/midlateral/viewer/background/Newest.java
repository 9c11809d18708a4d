package org.midlateral.viewer.background;

/** A place for one value that waits; a newer one takes its place. */
public final class Newest<T> {
  private T value;

  /** Puts a value there in place of any that waits. */
  public synchronized void put(T newer) {
    value = newer;
    notifyAll();
  }

  /** Takes out what waits. */
  public synchronized void clear() {
    value = null;
  }

  /** The newest value, taken out; null where none came in time. */
  public synchronized T take(long millis) throws InterruptedException {
    long end = System.nanoTime() + millis * 1_000_000;
    long left = millis;
    while (value == null && left > 0) {
      wait(left);
      left = (end - System.nanoTime()) / 1_000_000;
    }
    T taken = value;
    value = null;
    return taken;
  }
}
