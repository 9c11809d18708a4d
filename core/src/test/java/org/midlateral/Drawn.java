package org.midlateral;

import java.util.List;
import java.util.SplittableRandom;

/** Values drawn from a seed. What breaks a rule is often a limit: each comes up one time in ten. */
public final class Drawn {
  private static final double LIMIT = 0.1;

  /** What names, paths and numbers are made of, and what ends them. */
  private static final String SPECIAL = "./\\:*?\"<>|-_ ~$%'`\t\r\n\0aAzZ09";

  private static final int LONGEST = 255;

  private final SplittableRandom random;

  public Drawn(long seed) {
    this.random = new SplittableRandom(seed);
  }

  /** A number of a range, both limits included. */
  public double between(double low, double high) {
    double turn = random.nextDouble();
    if (turn < 2 * LIMIT) {
      return turn < LIMIT ? low : high;
    }
    return random.nextDouble(low, high);
  }

  /** So many numbers of a range, both limits included. */
  public double[] between(double low, double high, int count) {
    double[] numbers = new double[count];
    for (int i = 0; i < count; i++) {
      numbers[i] = between(low, high);
    }
    return numbers;
  }

  /** So many numbers from 0 to 1, none more likely than another. */
  public double[] even(int count) {
    return random.doubles(count).toArray();
  }

  public boolean yes() {
    return random.nextBoolean();
  }

  public <T> T pick(List<T> from) {
    return from.get(random.nextInt(from.size()));
  }

  /**
   * A text of any characters, none to {@value #LONGEST}, also such as are half a character: a third
   * each of letters as they are typed, of those that names are cut at, and of all others.
   */
  public String text() {
    int length = (int) between(0, yes() ? 4 : LONGEST);
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < length; i++) {
      text.append(character());
    }
    return text.toString();
  }

  /** The text with one character changed, put in or taken out. */
  public String near(String text) {
    StringBuilder changed = new StringBuilder(text);
    int at = random.nextInt(text.length() + 1);
    int way = random.nextInt(3);
    if (at < text.length() && way > 0) {
      changed.deleteCharAt(at);
    }
    return way < 2 ? changed.insert(at, character()).toString() : changed.toString();
  }

  private char character() {
    return switch (random.nextInt(3)) {
      case 0 -> (char) random.nextInt(' ', 127);
      case 1 -> SPECIAL.charAt(random.nextInt(SPECIAL.length()));
      default -> (char) random.nextInt(Character.MAX_VALUE + 1);
    };
  }
}
