package org.midlateral.measurement.key;

/**
 * Least number of letters inserted, removed, replaced or swapped with their neighbour that turns
 * one word into another (optimal string alignment).
 */
final class EditDistance {

  private EditDistance() {}

  static int between(String from, String to) {
    int[] before = new int[to.length() + 1];
    int[] previous = new int[to.length() + 1];
    int[] current = new int[to.length() + 1];
    for (int j = 0; j <= to.length(); j++) {
      previous[j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      current[0] = i;
      for (int j = 1; j <= to.length(); j++) {
        boolean same = from.charAt(i - 1) == to.charAt(j - 1);
        int least = previous[j - 1] + (same ? 0 : 1);
        least = Math.min(least, 1 + Math.min(previous[j], current[j - 1]));
        if (swapped(from, i, to, j)) {
          least = Math.min(least, before[j - 2] + 1);
        }
        current[j] = least;
      }
      int[] spare = before;
      before = previous;
      previous = current;
      current = spare;
    }
    return previous[to.length()];
  }

  private static boolean swapped(String from, int i, String to, int j) {
    return i > 1
        && j > 1
        && from.charAt(i - 1) == to.charAt(j - 2)
        && from.charAt(i - 2) == to.charAt(j - 1);
  }
}
