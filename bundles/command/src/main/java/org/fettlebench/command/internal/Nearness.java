package org.fettlebench.command.internal;

/** How far a mistyped word is from a known one. */
final class Nearness {
  private Nearness() {}

  /**
   * Returns the least number of letters to put in, leave out, change or swap with their neighbour
   * to get from one text to the other (optimal string alignment).
   */
  static int distance(String from, String to) {
    int[][] steps = new int[from.length() + 1][to.length() + 1];
    for (int i = 0; i <= from.length(); i++) {
      for (int j = 0; j <= to.length(); j++) {
        steps[i][j] = i == 0 ? j : j == 0 ? i : step(steps, from, to, i, j);
      }
    }
    return steps[from.length()][to.length()];
  }

  private static int step(int[][] steps, String from, String to, int i, int j) {
    int change = from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1;
    int least =
        Math.min(steps[i - 1][j - 1] + change, 1 + Math.min(steps[i - 1][j], steps[i][j - 1]));
    boolean swapped =
        i > 1
            && j > 1
            && from.charAt(i - 1) == to.charAt(j - 2)
            && from.charAt(i - 2) == to.charAt(j - 1);
    return swapped ? Math.min(least, steps[i - 2][j - 2] + 1) : least;
  }
}
