package org.midlateral.measurement.key;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EditDistanceTest {
  /** The first two are the usual examples of the literature, from memory; the rest are counted. */
  @ParameterizedTest
  @CsvSource({
    "kitten, sitting, 3",
    "ca, abc, 3",
    "wral, wrap, 1",
    "wral, wrall, 1",
    "diametre, diameter, 1",
    "'', wrap, 4",
    "wrap, '', 4",
    "wrap, wrap, 0",
    "abcd, badc, 2"
  })
  void countsEdits(String from, String to, int edits) {
    assertThat(EditDistance.between(from, to)).isEqualTo(edits);
  }

  /** Whatever one insertion, removal, replacement or swap makes of a word is one edit away. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void oneEditIsOne(long seed) {
    Random random = new Random(seed);
    String word = word(random);
    for (String other : oneEdit(word)) {
      int expected = other.equals(word) ? 0 : 1;
      assertThat(EditDistance.between(word, other)).as("%s to %s", word, other).isEqualTo(expected);
    }
    for (int n = 0; n < 50; n++) {
      String any = word(random);
      int edits = EditDistance.between(word, any);
      assertThat(EditDistance.between(any, word)).as("%s to %s", any, word).isEqualTo(edits);
      assertThat(edits <= 1)
          .as("%s to %s", word, any)
          .isEqualTo(any.equals(word) || oneEdit(word).contains(any));
    }
  }

  private static String word(Random random) {
    StringBuilder word = new StringBuilder();
    int length = 1 + random.nextInt(4);
    for (int i = 0; i < length; i++) {
      word.append((char) ('a' + random.nextInt(3)));
    }
    return word.toString();
  }

  private static Set<String> oneEdit(String word) {
    List<String> made = new ArrayList<>();
    for (int i = 0; i <= word.length(); i++) {
      String before = word.substring(0, i);
      String after = word.substring(i);
      for (char c = 'a'; c <= 'c'; c++) {
        made.add(before + c + after);
        if (!after.isEmpty()) {
          made.add(before + c + after.substring(1));
        }
      }
      if (!after.isEmpty()) {
        made.add(before + after.substring(1));
      }
      if (after.length() > 1) {
        made.add(before + after.charAt(1) + after.charAt(0) + after.substring(2));
      }
    }
    return new HashSet<>(made);
  }
}
