package org.midlateral.mechanics.closure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.Design.ClosureDesign;
import org.midlateral.measurement.Design.ClosureKind;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.Concerns;
import org.midlateral.relief.Relief;
import org.midlateral.relief.ReliefBubble;
import org.midlateral.solid.Solid;

/**
 * The closures of one orthosis: wrap, sleeve and tape always, straps where they may be advised.
 *
 * @param kind that was chosen
 * @param wrap elastic wrap
 * @param sleeve tubular sleeve
 * @param tape adhesive tape
 * @param straps the two straps, alike; none over a bulbous or sore PIP joint
 * @param findings what the user should know: no strap where one was chosen, a wrap that presses
 *     much
 */
public record Closure(
    ClosureKind kind,
    ElasticWrap wrap,
    Sleeve sleeve,
    Tape tape,
    List<Strap> straps,
    List<Finding> findings) {

  /**
   * The middle of a turn of tape lies at least so far from the shell's ends (mm). Common practice,
   * no source.
   */
  private static final double FROM_END = 5;

  private static final Finding TAPE_ON_SKIN =
      Finding.caution(
          "tape-on-skin",
          "closure.kind",
          "Tape is for the closed shell: without a dorsal shell it lies on the skin. An elastic wrap"
              + " or a sleeve serves instead (closure.kind: wrap or sleeve).",
          Double.NaN,
          Double.NaN);

  public Closure {
    straps = List.copyOf(straps);
    findings = List.copyOf(findings);
  }

  /** Whether tape was chosen and has no shell to lie on, so that another closure must serve. */
  public boolean isTapeOnSkin() {
    return findings.contains(TAPE_ON_SKIN);
  }

  /**
   * The closures.
   *
   * @param relief its bubbles
   * @param solids what is worn, the trough first
   */
  public static Closure of(Order order, DigitSurface digit, Relief relief, List<Solid> solids) {
    Measurements measured = order.measurements();
    ClosureDesign design = order.design().closure();
    OuterGirth girth = new OuterGirth(digit, solids);
    double from = solids.get(0).piece().outline().flankStart();
    double to = Math.min(solids.get(0).piece().outline().distal(), digit.tip());
    List<LevelGirth> levels =
        measured.circumference().keySet().stream()
            .map(
                level -> {
                  double s = measured.stationOf(level);
                  return new LevelGirth(level, s, digit.circumference(s), girth.at(s));
                })
            .toList();
    Optional<String> sore = sore(order, relief, digit);
    ElasticWrap wrap = ElasticWrap.of(design, girth, from, to, levels);
    List<Finding> findings = new ArrayList<>();
    if (design.kind() == ClosureKind.STRAP) {
      sore.map(Closure::refusedAsAdvice).ifPresent(findings::add);
    } else if (design.kind() == ClosureKind.WRAP) {
      pressing(wrap).ifPresent(findings::add);
    } else if (design.kind() == ClosureKind.TAPE && solids.size() == 1) {
      findings.add(TAPE_ON_SKIN);
    }
    return new Closure(
        design.kind(),
        wrap,
        Sleeve.of(levels, from, to),
        tape(design, girth, solids),
        sore.isPresent() ? List.of() : straps(design, girth, digit, solids.get(0)),
        findings);
  }

  private static Optional<Finding> pressing(ElasticWrap wrap) {
    double most = wrap.pressures().stream().mapToDouble(p -> p.pressure()).max().orElseThrow();
    if (most <= Concerns.PRESSURE) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.caution(
            "wrap-presses",
            "closure.tension",
            String.format(
                Locale.ROOT,
                "Laid with %.1f N the wrap presses with up to %.1f kPa (%.0f mmHg) on the whole; blood"
                    + " in the smallest vessels is at about %.1f kPa (%.0f mmHg), and no pressure is"
                    + " safe for every finger: lay it with less pull, or in fewer layers.",
                wrap.tension(),
                Laplace.KPA_PER_MPA * most,
                Laplace.MMHG_PER_MPA * most,
                Laplace.KPA_PER_MPA * Concerns.PRESSURE,
                Laplace.MMHG_PER_MPA * Concerns.PRESSURE),
            most,
            Concerns.PRESSURE));
  }

  /** Why a strap over the PIP joint would press where it must not. */
  private static Optional<String> sore(Order order, Relief relief, DigitSurface digit) {
    ClosureDesign design = order.design().closure();
    if (Relief.bulbous(order.measurements(), digit)) {
      return Optional.of("the PIP joint is bulbous");
    }
    if (order.design().relief().sore()) {
      return Optional.of("its sides are sore");
    }
    for (ReliefBubble bubble : relief.bubbles()) {
      if (Math.abs(bubble.station() - digit.pipAxis()) < design.width() / 2 + bubble.length()) {
        return Optional.of("a sore spot lies under it");
      }
    }
    return Optional.empty();
  }

  private static Finding refusedAsAdvice(String why) {
    return Finding.caution(
        "strap-over-sore-joint",
        "closure.kind",
        "A strap over the PIP joint is not advised: "
            + why
            + ". Use an elastic wrap or a sleeve (closure.kind: wrap or sleeve).",
        Double.NaN,
        Double.NaN);
  }

  private static List<Strap> straps(
      ClosureDesign design, OuterGirth girth, DigitSurface digit, Solid trough) {
    double axis = digit.pipAxis();
    double off = trough.piece().gap().at(0, axis) + trough.piece().wall();
    double wrapped = trough.piece().outline().polygon().getEnvelopeInternal().getWidth();
    double volar = Math.min(wrapped, digit.circumference(axis) / 2 + Math.PI * off);
    Strap strap = Strap.of(design, axis, girth.at(axis), volar);
    return List.of(strap, strap);
  }

  /**
   * Round both ends of the dorsal shell within its length, or of the trough's flanks where there is
   * none.
   */
  private static Tape tape(ClosureDesign design, OuterGirth girth, List<Solid> solids) {
    var outline = solids.get(solids.size() - 1).piece().outline();
    double inset = Math.max(FROM_END, design.width() / 2);
    double first = outline.flankStart() + inset;
    double last = outline.flankEnd() - inset;
    // Where two turns would lie on one another, one in the middle holds.
    List<Double> stations =
        last - first < design.width() ? List.of((first + last) / 2) : List.of(first, last);
    return new Tape(
        stations, stations.stream().map(s -> girth.at(s) + design.lap()).toList(), design.width());
  }
}
