package org.midlateral.recipe.batch;

import java.util.Arrays;

/** A set of 64-bit numbers in one array, open-addressed: about sixteen bytes each. */
final class LongSet {
  private long[] table = new long[1 << 10];
  private int size;
  private boolean zero;

  /** Adds a number; tells whether it is new. */
  boolean add(long value) {
    if (value == 0) {
      boolean isNew = !zero;
      zero = true;
      return isNew;
    }
    if (2 * size >= table.length) {
      grow();
    }
    if (!put(value)) {
      return false;
    }
    size++;
    return true;
  }

  /** Whether a number was added. */
  boolean contains(long value) {
    if (value == 0) {
      return zero;
    }
    int mask = table.length - 1;
    int slot = (int) (value >>> 17) & mask;
    while (table[slot] != 0 && table[slot] != value) {
      slot = (slot + 1) & mask;
    }
    return table[slot] == value;
  }

  private boolean put(long value) {
    int mask = table.length - 1;
    int slot = (int) (value >>> 17) & mask;
    while (table[slot] != 0) {
      if (table[slot] == value) {
        return false;
      }
      slot = (slot + 1) & mask;
    }
    table[slot] = value;
    return true;
  }

  private void grow() {
    long[] old = table;
    table = new long[Math.multiplyExact(2, old.length)];
    Arrays.stream(old).filter(value -> value != 0).forEach(this::put);
  }
}
