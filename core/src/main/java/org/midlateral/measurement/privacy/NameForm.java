package org.midlateral.measurement.privacy;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The usual forms of a person's name. Words are weighed by their form alone, save that ordinary
 * ones are no name: there is no list of names.
 */
final class NameForm {
  private static final Pattern TITLE = Pattern.compile("(?i)mr|mrs|ms|dr|herr|frau|mme");
  private static final Pattern BETWEEN_WORDS =
      Pattern.compile(
          "[-._ ,;/]+|(?<=\\p{Ll})(?=\\p{Lu})|(?<=\\p{L})(?=\\p{Nd})|(?<=\\p{Nd})(?=\\p{L})");
  private static final Pattern WORD = Pattern.compile("\\p{L}+");
  private static final Pattern CAPITAL = Pattern.compile("\\p{Lu}\\p{Ll}*");
  private static final Pattern HAS_VOWEL = Pattern.compile("(?i)[aeiouy]|[^\\p{IsLatin}\\p{M}]");

  /** A letter or two with a number at them, as a1, 7c or ab12: a place or a count. */
  private static final Pattern NUMBERED =
      Pattern.compile("(?<!\\p{L})(\\p{L}{1,2}\\p{Nd}+|\\p{Nd}+\\p{L}{1,2})(?!\\p{L})");

  /** A capital, a stem in small letters and a number, as T-arth-03: no one writes a name so. */
  private static final Pattern STEM = Pattern.compile("\\p{Lu}[-._ ]\\p{Ll}+[-._ ]?\\p{Nd}+");

  /** Most words that a name has. */
  private static final int MOST_WORDS = 4;

  /** Letters that make a word of small letters, or of capitals alone, more than an abbreviation. */
  private static final int WORD_LETTERS = 4;

  /** The same of a word that begins with a capital. */
  private static final int CAPITAL_LETTERS = 3;

  private NameForm() {}

  /**
   * Whether a code is in the form of a name: of two words to four, as Ada-Example, ada.example,
   * AdaExample2 or EXAMPLE-A.
   */
  static boolean is(String code) {
    List<String> all = BETWEEN_WORDS.splitAsStream(code).filter(word -> !word.isEmpty()).toList();
    if (all.size() > 1 && TITLE.matcher(all.get(0)).matches() && isWord(all.get(1))) {
      return true;
    }
    List<String> words =
        BETWEEN_WORDS
            .splitAsStream(NUMBERED.matcher(code).replaceAll(" "))
            .filter(NameForm::isWord)
            .filter(word -> !OrdinaryWords.contain(word))
            .toList();
    boolean many = words.size() >= 2 && words.size() <= MOST_WORDS && !STEM.matcher(code).matches();
    return many && (capitals(words) || written(words));
  }

  /**
   * Whether a note holds one: a title and a word, two words with capitals, or a word and initial.
   */
  static boolean in(String note) {
    Matcher words = WORD.matcher(note);
    String before = "";
    int end = 0;
    while (words.find()) {
      String between = note.substring(end, words.start());
      if (pair(before, between, words.group())) {
        return true;
      }
      before = words.group();
      end = words.end();
    }
    return false;
  }

  private static boolean pair(String first, String between, String second) {
    if (TITLE.matcher(first).matches() && between.matches("\\.? *")) {
      return CAPITAL.matcher(second).matches();
    }
    boolean initial = first.length() == 1;
    boolean together = between.matches(initial ? "[-. ]{1,2}" : "[-, ]{1,2}");
    return together
        && !OrdinaryWords.contain(first)
        && !OrdinaryWords.contain(second)
        && capitals(List.of(first, second));
  }

  private static boolean isWord(String text) {
    return WORD.matcher(text).matches();
  }

  /** Words that begin with capitals; one of them may be an initial beside a longer one. */
  private static boolean capitals(List<String> words) {
    long whole = words.stream().filter(word -> word.length() > 1).count();
    return words.stream().allMatch(word -> CAPITAL.matcher(word).matches())
        && (whole >= 2 || words.stream().anyMatch(word -> word.length() >= CAPITAL_LETTERS));
  }

  /** Words in small letters or capitals throughout, which can be said aloud. */
  private static boolean written(List<String> words) {
    return words.stream().anyMatch(word -> word.length() >= WORD_LETTERS)
        && words.stream().allMatch(word -> word.length() < CAPITAL_LETTERS || canBeSaid(word));
  }

  private static boolean canBeSaid(String word) {
    String plain = Normalizer.normalize(word.toLowerCase(Locale.ROOT), Normalizer.Form.NFD);
    return HAS_VOWEL.matcher(plain).find();
  }
}
