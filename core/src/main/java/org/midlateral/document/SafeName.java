package org.midlateral.document;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * File and folder names that every usual system takes, made from texts of users' own: letters and
 * figures of ASCII, dots, dashes and underscores, at most 60, not beginning or ending with a dot,
 * and none of the names that some systems keep for devices. A text that had to be changed gets a
 * mark of its own, so that two texts never come to one name by being changed.
 */
public final class SafeName {
  private static final int LONGEST = 60;
  private static final Set<String> RESERVED =
      Stream.concat(
              Stream.of("con", "prn", "aux", "nul", "conin$", "conout$", "clock$"),
              IntStream.rangeClosed(0, 9).boxed().flatMap(n -> Stream.of("com" + n, "lpt" + n)))
          .collect(Collectors.toUnmodifiableSet());

  private SafeName() {}

  /** A name for a text; the text itself where that is safe. */
  public static String of(String text) {
    StringBuilder safe = new StringBuilder();
    Normalizer.normalize(text, Normalizer.Form.NFKD)
        .codePoints()
        .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
        .limit(LONGEST)
        .forEach(c -> safe.append(allowed(c) ? (char) c : '_'));
    String name = safe.toString();
    if (name.startsWith(".") || name.startsWith("-") || name.isEmpty() || reserved(name)) {
      name = "_" + name;
    }
    if (name.endsWith(".")) {
      name = name.substring(0, name.length() - 1) + "_";
    }
    return name.equals(text) ? name : name + "-" + mark(text);
  }

  /** A name for a text whose plain name is taken by another text, as by one in other case. */
  public static String apart(String text) {
    String name = of(text);
    return name.equals(text) ? name + "-" + mark(text) : name;
  }

  /** What two names have in common on a system that does not tell capitals from small letters. */
  public static String folded(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  private static boolean allowed(int c) {
    return c >= 'a' && c <= 'z'
        || c >= 'A' && c <= 'Z'
        || c >= '0' && c <= '9'
        || c == '.'
        || c == '-'
        || c == '_';
  }

  /** A device's name stays one with any ending behind it. */
  private static boolean reserved(String name) {
    int dot = name.indexOf('.');
    return RESERVED.contains(folded(dot < 0 ? name : name.substring(0, dot)));
  }

  private static String mark(String text) {
    return Digest.of(text.getBytes(StandardCharsets.UTF_8)).substring(0, 8);
  }
}
