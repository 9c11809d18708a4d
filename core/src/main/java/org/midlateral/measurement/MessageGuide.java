package org.midlateral.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.midlateral.shared.SharedData;

/**
 * What findings mean, by their codes: the sections of the walk-through's page of messages. The page
 * is the one table of it, so that who reads the page and who asks the program are told the same.
 */
public final class MessageGuide {
  /** The code under which errors of an input are explained. */
  public static final String INPUT = "input";

  private static final Pattern SECTION =
      Pattern.compile(
          "\\n## ([^\\n]+)\\n\\nCodes: ([^\\n]+)\\n\\n(.*?)(?=\\n## |$)", Pattern.DOTALL);
  private static final Pattern CODE = Pattern.compile("`([a-z-]+)`");
  private static final Pattern LINK = Pattern.compile("\\[([^]]+)]\\(([^)]+)\\)");

  /**
   * A section of the page.
   *
   * @param title its heading
   * @param codes of the findings that it is about
   * @param paragraphs each in one line, links told as files of the samples
   */
  public record GuideSection(String title, List<String> codes, List<String> paragraphs) {
    public GuideSection {
      codes = List.copyOf(codes);
      paragraphs = List.copyOf(paragraphs);
    }
  }

  private MessageGuide() {}

  /** All sections that are about a code, in the page's order. */
  public static List<GuideSection> sections() {
    List<GuideSection> sections = new ArrayList<>();
    Matcher found = SECTION.matcher(SharedData.text(SharedData.MESSAGES));
    while (found.find()) {
      List<String> codes = CODE.matcher(found.group(2)).results().map(m -> m.group(1)).toList();
      sections.add(new GuideSection(found.group(1), codes, paragraphs(found.group(3))));
    }
    return sections;
  }

  /** The section about a code; empty where no finding has it. */
  public static Optional<GuideSection> of(String code) {
    return sections().stream().filter(section -> section.codes().contains(code)).findFirst();
  }

  private static List<String> paragraphs(String text) {
    return Pattern.compile("\\n\\n+")
        .splitAsStream(text.strip())
        .map(paragraph -> LINK.matcher(paragraph).replaceAll(MessageGuide::asFile))
        .map(paragraph -> paragraph.lines().collect(Collectors.joining(" ")))
        .toList();
  }

  private static String asFile(MatchResult link) {
    return Matcher.quoteReplacement(
        link.group(1) + " (samples/walk-through/" + link.group(2) + ")");
  }
}
