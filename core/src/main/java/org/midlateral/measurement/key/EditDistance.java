package org.midlateral.measurement.key;

/**
 * Least number of letters inserted, removed, replaced or swapped with their neighbour that turns
 * one word into another, no letter being touched twice. By the table of R. A. Wagner and M. J.
 * Fischer, J. ACM 21 (1974) 168-173, with the swap of R. Lowrance and R. A. Wagner, J. ACM 22
 * (1975) 177-183, where nothing happens between the two letters; both from memory.
 */
final class EditDistance {
  private final String from;
  private final String to;

  /** Edits that turn the first i letters of one word into the first j of the other. */
  private final int[][] edits;

  private EditDistance(String from, String to) {
    this.from = from;
    this.to = to;
    this.edits = new int[from.length() + 1][to.length() + 1];
  }

  static int between(String from, String to) {
    EditDistance distance = new EditDistance(from, to);
    for (int i = 0; i <= from.length(); i++) {
      for (int j = 0; j <= to.length(); j++) {
        distance.edits[i][j] = distance.least(i, j);
      }
    }
    return distance.edits[from.length()][to.length()];
  }

  /** From what shorter beginnings take. */
  private int least(int i, int j) {
    if (i == 0 || j == 0) {
      return i + j;
    }
    if (alike(i, j)) {
      return edits[i - 1][j - 1];
    }
    int shorter = Math.min(edits[i - 1][j - 1], Math.min(edits[i - 1][j], edits[i][j - 1]));
    boolean swapped = i > 1 && j > 1 && alike(i, j - 1) && alike(i - 1, j);
    return 1 + (swapped ? Math.min(shorter, edits[i - 2][j - 2]) : shorter);
  }

  /** Whether the i-th letter of one word is the j-th of the other, counted from 1. */
  private boolean alike(int i, int j) {
    return from.charAt(i - 1) == to.charAt(j - 1);
  }
}
