package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.pattern.LevelNames;
import org.midlateral.mechanics.closure.Closure;
import org.midlateral.mechanics.closure.ElasticWrap;
import org.midlateral.mechanics.closure.Sleeve;
import org.midlateral.mechanics.closure.Sleeve.SleevePart;
import org.midlateral.mechanics.closure.Strap;

/** What the sheet says of the closure that was chosen. */
final class ClosureWords {
  private static final String WORN =
      " wide when laid flat and slack (stretched by 5 to 50 % when worn).";

  /** Standard gravity (m/s²), ISO 80000-3. */
  private static final double GRAVITY = 9.80665;

  private ClosureWords() {}

  /** What to use first; then what is to be minded. */
  static List<String> of(Closure closure, Lengths lengths) {
    List<String> texts = new ArrayList<>();
    switch (closure.served()) {
      case WRAP -> wrap(closure.wrap(), lengths, texts);
      case SLEEVE -> sleeve(closure.sleeve(), lengths, texts);
      case TAPE -> tape(closure, lengths, texts);
      case STRAP -> strap(closure.straps().get(0), lengths, texts);
    }
    closure.findings().forEach(finding -> texts.add(withoutKeys(finding.text())));
    return texts;
  }

  /** A finding's text without the keys that it names in brackets for who has the file at hand. */
  private static String withoutKeys(String text) {
    return text.replaceAll(" \\(closure\\.kind: [^)]*\\)", "");
  }

  private static void wrap(ElasticWrap wrap, Lengths lengths, List<String> texts) {
    int turns = wrap.turns() * wrap.passes();
    texts.add(
        "Elastic wrap "
            + lengths.with(wrap.width())
            + " wide, "
            + lengths.about(wrap.length())
            + " of it: "
            + turns
            + (turns == 1 ? " turn" : " turns")
            + (wrap.passes() > 1 ? " in " + wrap.passes() + " passes" : "")
            + ".");
    texts.add(
        "Wind it from distal to proximal "
            + pull(wrap.tension())
            + ", and without added pull over the joint.");
  }

  /** A pull as the hand knows it: what weighs as much, to five grams. */
  private static String pull(double newton) {
    long grams = 5 * Math.round(newton / GRAVITY * 200);
    return grams > 0
        ? "with an even pull, like that of " + grams + " g hung on it"
        : "without pull, just laid round";
  }

  private static void sleeve(Sleeve sleeve, Lengths lengths, List<String> texts) {
    texts.add(
        "Sleeve, "
            + lengths.about(sleeve.length())
            + " of it. Girth over the orthosis: "
            + sleeve.levels().stream()
                .map(level -> LevelNames.of(level.level()) + " " + lengths.text(level.worn()))
                .collect(Collectors.joining(", "))
            + " "
            + lengths.unit().symbol()
            + ".");
    List<SleevePart> parts = sleeve.parts();
    texts.add(
        parts.size() == 1
            ? "Size to look for: " + size(parts.get(0), lengths) + WORN
            : "No sleeve of one width fits. A sleeve of two widths: "
                + size(parts.get(0), lengths)
                + " proximally, "
                + size(parts.get(1), lengths)
                + " distally, sewn together "
                + lengths.with(parts.get(0).to())
                + " distal of the web;"
                + WORN);
  }

  private static String size(SleevePart part, Lengths lengths) {
    return lengths.text(part.tightest()) + " to " + lengths.with(part.slackest());
  }

  private static void tape(Closure closure, Lengths lengths, List<String> texts) {
    String ends =
        closure.tape().lengths().stream().map(lengths::about).collect(Collectors.joining(" and "));
    texts.add(
        "Adhesive tape "
            + lengths.with(closure.tape().width())
            + " wide, one turn "
            + (closure.tape().stations().size() > 1 ? "at each end" : "round the middle")
            + " of the dorsal shell, overlapping itself: "
            + ends
            + ". On the shell, not on the skin; fold the last end under to find it again.");
  }

  private static void strap(Strap strap, Lengths lengths, List<String> texts) {
    texts.add(
        "Hook and loop, centred on the PIP axis: a band "
            + lengths.with(strap.width())
            + " wide, cut along its middle into two straps, each "
            + lengths.with(strap.length())
            + " long ("
            + lengths.with(strap.girth())
            + " round, and "
            + lengths.with(strap.lap())
            + " over itself); hook "
            + lengths.with(strap.hook())
            + " long on the volar side.");
    texts.add(
        "Strap 1 proximally, strap 2 distally. Each stays attached on one half of the hook's length, "
            + lengths.with(strap.attached())
            + ", goes over that edge all the way round and closes on the free half beside the other's"
            + " end, then over itself. One opens while the other stays closed. True size on the"
            + " pattern.");
  }
}
