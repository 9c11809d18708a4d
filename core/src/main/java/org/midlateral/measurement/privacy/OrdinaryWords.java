package org.midlateral.measurement.privacy;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.midlateral.measurement.Material;
import org.midlateral.measurement.SharedTable;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.shared.SharedData;

/** Words that are no one's name in a code or a note. */
final class OrdinaryWords {
  private OrdinaryWords() {}

  private static final class Standard {
    static final Set<String> WORDS = load();
  }

  /** Whether a word, in letters of any case, is one. */
  static boolean contain(String word) {
    return Standard.WORDS.contains(word.toLowerCase(Locale.ROOT));
  }

  private static Set<String> load() {
    Set<String> words = new HashSet<>();
    for (Object group : ((Map<?, ?>) SharedTable.load(SharedData.ORDINARY_WORDS)).values()) {
      ((List<?>) group).forEach(word -> words.add(word.toString()));
    }
    for (InputKey key : KeyTable.standard().keys()) {
      addAll(key.path(), words);
      key.choices().forEach(choice -> addAll(choice, words));
    }
    Material.all().forEach(material -> addAll(material.title(), words));
    CalendarNames english = CalendarNames.all().get("en");
    english.months().forEach(month -> addAll(month, words));
    english.days().forEach(day -> addAll(day, words));
    return words;
  }

  /** The words of a text, by hand: at every start it is done for each key. */
  private static void addAll(String text, Set<String> words) {
    String lower = text.toLowerCase(Locale.ROOT);
    int start = 0;
    for (int i = 0; i <= lower.length(); i++) {
      if (i == lower.length() || !Character.isLetter(lower.charAt(i))) {
        if (i - start > 1) {
          words.add(lower.substring(start, i));
        }
        start = i + 1;
      }
    }
  }
}
