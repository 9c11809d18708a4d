package org.midlateral.document;

import java.util.Arrays;

/**
 * Deflate (RFC 1951, DEFLATE Compressed Data Format) for rows of numbers between quotes, several
 * times as fast as the library's quickest level and about as short. Any bytes are packed rightly;
 * only such rows are packed well.
 *
 * <p>What follows a quote is compared with what followed the sixth quote before it, which in rows
 * of three attributes is the same place of the row before. One fixed table of codes, made for
 * digits, serves all.
 */
final class RowDeflate {
  /** Quotes from a place of a row to the same one of the next. */
  private static final int PERIOD = 6;

  private static final int SHORTEST = 4;
  private static final int LONGEST = 258;
  private static final int FARTHEST = 1 << 15;
  private static final int END = 256;

  /** Code length of each literal and length symbol (bits); they fill the code exactly. */
  private static final int[] LITERAL_BITS = literalBits();

  /** Code length of each distance symbol, most of all those from 25 to 96 bytes. */
  private static final int[] DISTANCE_BITS = distanceBits();

  /** Code lengths of the code lengths themselves. */
  private static final int[] LENGTH_BITS = {
    0, 0, 3, 4, 3, 3, 3, 3, 3, 0, 0, 3, 4, 0, 0, 0, 0, 0, 0
  };

  /** Order in which those are written, RFC 1951, 3.2.7. */
  private static final int[] LENGTH_ORDER = {
    16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15
  };

  private static final int[] LITERALS = codes(LITERAL_BITS);
  private static final int[] DISTANCES = codes(DISTANCE_BITS);
  private static final int[] LENGTHS = codes(LENGTH_BITS);

  /** Code of each match length, extra bits included, and how many bits that is. */
  private static final int[] MATCH = new int[LONGEST + 1];

  private static final int[] MATCH_BITS = new int[LONGEST + 1];

  static {
    for (int length = 3; length <= LONGEST; length++) {
      int symbol = lengthSymbol(length);
      int extra = symbol < 265 || symbol == 285 ? 0 : (symbol - 261) / 4;
      int past = length - 3 & (1 << extra) - 1;
      MATCH[length] = LITERALS[symbol] | past << LITERAL_BITS[symbol];
      MATCH_BITS[length] = LITERAL_BITS[symbol] + extra;
    }
  }

  private final byte[] text;
  private final int[] quotes = new int[8];
  private int quoteCount;
  private byte[] out;
  private int size;
  private long bits;
  private int bitCount;

  private RowDeflate(byte[] text) {
    this.text = text;
    this.out = new byte[text.length / 3 + 1024];
  }

  /** Packs bytes. */
  static byte[] of(byte[] text) {
    RowDeflate deflate = new RowDeflate(text);
    deflate.header();
    deflate.body();
    deflate.put(LITERALS[END], LITERAL_BITS[END]);
    deflate.put(0, 7);
    deflate.flush();
    return Arrays.copyOf(deflate.out, deflate.size);
  }

  /** One last block with codes of its own, RFC 1951, 3.2.7. */
  private void header() {
    put(1, 1);
    put(2, 2);
    put(LITERAL_BITS.length - 257, 5);
    put(DISTANCE_BITS.length - 1, 5);
    put(LENGTH_ORDER.length - 4, 4);
    for (int symbol : LENGTH_ORDER) {
      put(LENGTH_BITS[symbol], 3);
    }
    for (int length : LITERAL_BITS) {
      put(LENGTHS[length], LENGTH_BITS[length]);
    }
    for (int length : DISTANCE_BITS) {
      put(LENGTHS[length], LENGTH_BITS[length]);
    }
  }

  private void body() {
    int at = 0;
    while (at < text.length) {
      int symbol = text[at] & 0xff;
      if (symbol == '"') {
        int from = quotes[quoteCount - PERIOD & 7];
        int length = quoteCount < PERIOD || at - from > FARTHEST ? 1 : match(from, at);
        quotes[quoteCount++ & 7] = at;
        if (length >= SHORTEST) {
          put(MATCH[length], MATCH_BITS[length]);
          putDistance(at - from);
          for (int i = at + 1; i < at + length; i++) {
            if (text[i] == '"') {
              quotes[quoteCount++ & 7] = i;
            }
          }
          at += length;
          continue;
        }
      }
      put(LITERALS[symbol], LITERAL_BITS[symbol]);
      at++;
    }
  }

  /** How far two places read alike. */
  private int match(int from, int at) {
    int most = Math.min(LONGEST, text.length - at);
    int length = 1;
    while (length < most && text[from + length] == text[at + length]) {
      length++;
    }
    return length;
  }

  private void putDistance(int distance) {
    int past = distance - 1;
    int extra = Math.max(0, 30 - Integer.numberOfLeadingZeros(past));
    int symbol = past < 4 ? past : 2 * extra + (past >> extra);
    put(DISTANCES[symbol], DISTANCE_BITS[symbol]);
    put(past & (1 << extra) - 1, extra);
  }

  private static int lengthSymbol(int length) {
    if (length == LONGEST) {
      return 285;
    }
    int past = length - 3;
    int extra = Math.max(0, 29 - Integer.numberOfLeadingZeros(past));
    return 257 + 4 * extra + (past >> extra);
  }

  /** The least significant bit first; at most 32 bits. */
  private void put(int code, int count) {
    bits |= (long) code << bitCount;
    bitCount += count;
    if (bitCount >= 32) {
      flush();
    }
  }

  /** Writes the whole bytes that are waiting. */
  private void flush() {
    if (size + 8 > out.length) {
      out = Arrays.copyOf(out, 2 * out.length);
    }
    while (bitCount >= 8) {
      out[size++] = (byte) bits;
      bits >>>= 8;
      bitCount -= 8;
    }
  }

  /** Digits in 4 bits, signs and the usual match lengths in 5 and 6, the rest in 11 and 12. */
  private static int[] literalBits() {
    int[] length = new int[286];
    Arrays.fill(length, '0', '9' + 1, 4);
    length['.'] = 5;
    length['-'] = 6;
    Arrays.fill(length, 258, 271, 6);
    int shorter = 251;
    for (int i = 0; i < length.length; i++) {
      if (length[i] == 0) {
        length[i] = shorter-- > 0 ? 11 : 12;
      }
    }
    return length;
  }

  private static int[] distanceBits() {
    int[] length = new int[30];
    Arrays.fill(length, 0, 6, 7);
    Arrays.fill(length, 6, length.length, 8);
    Arrays.fill(length, 9, 12, 2);
    length[12] = 3;
    return length;
  }

  /** Codes for code lengths, RFC 1951, 3.2.2, with their bits reversed as they are written. */
  private static int[] codes(int[] lengths) {
    int[] codes = new int[lengths.length];
    int code = 0;
    for (int bits = 1; bits < 16; bits++) {
      for (int i = 0; i < lengths.length; i++) {
        if (lengths[i] == bits) {
          codes[i] = Integer.reverse(code++) >>> 32 - bits;
        }
      }
      code <<= 1;
    }
    return codes;
  }
}
