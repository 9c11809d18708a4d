package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.pattern.LevelNames;
import org.midlateral.mechanics.closure.Closure;
import org.midlateral.mechanics.closure.ElasticWrap;
import org.midlateral.mechanics.closure.Laplace;
import org.midlateral.mechanics.closure.Sleeve;
import org.midlateral.mechanics.closure.Strap;

/** What the sheet says of the closure that was chosen. */
final class ClosureWords {
  private ClosureWords() {}

  static List<String> of(Closure closure, Lengths lengths) {
    List<String> texts = new ArrayList<>();
    closure.findings().forEach(finding -> texts.add(finding.text()));
    switch (closure.kind()) {
      case WRAP -> wrap(closure.wrap(), lengths, texts);
      case SLEEVE -> sleeve(closure.sleeve(), lengths, texts);
      case TAPE -> {
        if (closure.isTapeOnSkin()) {
          wrap(closure.wrap(), lengths, texts);
        } else {
          tape(closure, lengths, texts);
        }
      }
      case STRAP -> {
        if (closure.straps().isEmpty()) {
          wrap(closure.wrap(), lengths, texts);
        } else {
          strap(closure.straps().get(0), lengths, texts);
        }
      }
    }
    return texts;
  }

  private static void wrap(ElasticWrap wrap, Lengths lengths, List<String> texts) {
    texts.add(
        String.format(
            Locale.ROOT,
            "Elastic wrap, %s wide: %d turn%s%s, %s laid (stretched, with the lap), %.1f layers.",
            lengths.with(wrap.width()),
            wrap.turns() * wrap.passes(),
            wrap.turns() * wrap.passes() == 1 ? "" : "s",
            wrap.passes() > 1 ? " in " + wrap.passes() + " passes" : "",
            lengths.with(wrap.length()),
            wrap.layers()));
    texts.add(
        String.format(Locale.ROOT, "Pressure at %.1f N of pull, by Laplace's law: ", wrap.tension())
            + wrap.pressures().stream()
                .map(
                    p ->
                        LevelNames.of(p.level())
                            + String.format(
                                Locale.ROOT,
                                " %.1f kPa (%.0f mmHg)",
                                Laplace.KPA_PER_MPA * p.pressure(),
                                Laplace.MMHG_PER_MPA * p.pressure()))
                .collect(Collectors.joining(", "))
            + ". Mean figures; higher over sharp curves. Wind from distal to proximal, without"
            + " added pull over the joint.");
  }

  private static void sleeve(Sleeve sleeve, Lengths lengths, List<String> texts) {
    texts.add(
        "Sleeve, "
            + lengths.with(sleeve.length())
            + " long. Girth over the orthosis: "
            + sleeve.levels().stream()
                .map(level -> LevelNames.of(level.level()) + " " + lengths.text(level.worn()))
                .collect(Collectors.joining(", "))
            + " "
            + lengths.unit().symbol()
            + ".");
    texts.add(
        sleeve.oneWidthServes()
            ? "Size to look for: "
                + lengths.text(sleeve.tightest())
                + " to "
                + lengths.with(sleeve.slackest())
                + " wide when laid flat and slack (stretched by 5 to 50 % when worn)."
            : "No even width holds at the thinnest level and spares the thickest: look for a tapered"
                + " sleeve, or take an elastic wrap.");
  }

  private static void tape(Closure closure, Lengths lengths, List<String> texts) {
    String ends =
        closure.tape().lengths().stream().map(lengths::with).collect(Collectors.joining(" and "));
    texts.add(
        "Adhesive tape, "
            + lengths.with(closure.tape().width())
            + " wide, one turn "
            + (closure.tape().stations().size() > 1 ? "at each end" : "round the middle")
            + " of the dorsal shell, lapped on itself: "
            + ends
            + ". On the shell, not on the skin; fold the last end under to find it again.");
  }

  private static void strap(Strap strap, Lengths lengths, List<String> texts) {
    texts.add(
        "Hook and loop, centred on the PIP axis: two straps, each "
            + lengths.with(strap.length())
            + " long ("
            + lengths.with(strap.girth())
            + " round, and the lap) and "
            + lengths.with(strap.width())
            + " wide; hook "
            + lengths.with(strap.hook())
            + " long on the volar side.");
    texts.add(
        "Beyond the first "
            + lengths.with(strap.attached())
            + " cut away the proximal half of one strap"
            + " and the distal half of the other. Each stays attached at its wide end; the narrow"
            + " ends close from opposite sides, beside one another. True size on the pattern.");
  }
}
