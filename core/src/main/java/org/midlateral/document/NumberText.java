package org.midlateral.document;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Text that is mostly numbers, gathered as bytes. A 32-bit number becomes the shortest decimal that
 * reads back as it. Not for use by two threads at once.
 */
final class NumberText {
  private static final double[] TEN = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11};

  /** Seven digits are always few enough that no two of them read back as one number; nine do. */
  private static final int FEWEST = 7;

  private static final int MOST = 9;

  /** No number takes more bytes. */
  private static final int ROOM = 24;

  private byte[] bytes;
  private int size;

  /** Room for so many bytes, and more when they are needed. */
  NumberText(int room) {
    this.bytes = new byte[Math.max(ROOM, room)];
  }

  NumberText put(String text) {
    return put(text.getBytes(StandardCharsets.UTF_8));
  }

  NumberText put(byte[] text) {
    require(text.length);
    System.arraycopy(text, 0, bytes, size, text.length);
    size += text.length;
    return this;
  }

  /** A whole number that is not negative. */
  NumberText put(int number) {
    require(ROOM);
    digits(number, 1);
    return this;
  }

  NumberText put(float number) {
    if (number == 0) {
      return put(1 / number < 0 ? "-0" : "0");
    }
    double magnitude = Math.abs((double) number);
    int places = decimals(magnitude);
    if (places < 0) {
      return put(Float.toString(number));
    }
    require(ROOM);
    if (number < 0) {
      bytes[size++] = '-';
    }
    long scaled = Math.round(magnitude * TEN[places]);
    long ten = (long) TEN[places];
    digits((int) (scaled / ten), 1);
    int fraction = (int) (scaled % ten);
    if (fraction != 0) {
      bytes[size++] = '.';
      digits(fraction, places);
      while (bytes[size - 1] == '0') {
        size--;
      }
    }
    return this;
  }

  /** How many decimals read back as the number; -1 where it is left to the library. */
  private static int decimals(double magnitude) {
    if (!(magnitude >= 1e-2 && magnitude < 1e6)) {
      return -1;
    }
    int before = 0;
    while (magnitude >= TEN[before]) {
      before++;
    }
    if (before == 0 && magnitude < 0.1) {
      before--;
    }
    for (int places = FEWEST - before; places < MOST - before; places++) {
      double read = Math.round(magnitude * TEN[places]) / TEN[places];
      // Its neighbours too, as the quotient is rounded once before it is rounded to 32 bits.
      if ((float) Math.nextDown(read) == magnitude && (float) Math.nextUp(read) == magnitude) {
        return places;
      }
    }
    return MOST - before;
  }

  /** Writes a number in so many digits at least, with zeros before it. */
  private void digits(int number, int least) {
    int count = least;
    while (count < TEN.length - 1 && number >= TEN[count]) {
      count++;
    }
    int rest = number;
    for (int i = size + count - 1; i >= size; i--) {
      int tenth = rest / 10;
      bytes[i] = (byte) ('0' + rest - 10 * tenth);
      rest = tenth;
    }
    size += count;
  }

  private void require(int more) {
    if (size + more > bytes.length) {
      bytes = Arrays.copyOf(bytes, Math.max(size + more, 2 * bytes.length));
    }
  }

  /** What was gathered. */
  byte[] toBytes() {
    return Arrays.copyOf(bytes, size);
  }
}
