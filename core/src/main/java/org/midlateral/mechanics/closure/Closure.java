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
 * @param straps the two straps, alike; none over a bulbous or sore PIP joint, or without room
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

  private static final Finding TAPE_ON_SKIN =
      Finding.caution(
          "tape-on-skin",
          "closure.kind",
          "Tape is for the closed shell: without a dorsal shell it lies on the skin. Use an"
              + " elastic wrap or a sleeve instead (closure.kind: wrap or sleeve).",
          Double.NaN,
          Double.NaN);

  public Closure {
    straps = List.copyOf(straps);
    findings = List.copyOf(findings);
  }

  /**
   * The kind that serves: the one that was chosen, or what stands in for it where it would lie on
   * skin, press on a sore joint or find no room.
   */
  public ClosureKind served() {
    boolean falls =
        switch (kind) {
          case WRAP -> false;
          case TAPE -> isTapeOnSkin();
          case STRAP -> straps.isEmpty();
          case SLEEVE -> sleeve.parts().isEmpty();
        };
    return falls ? ClosureKind.WRAP : kind;
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
    ClosureLayout laid =
        ClosureLayout.of(design, digit, solids.stream().map(Solid::piece).toList());
    List<LevelGirth> levels =
        measured.circumference().keySet().stream()
            .map(
                level -> {
                  double s = measured.stationOf(level);
                  return new LevelGirth(level, s, digit.circumference(s), girth.at(s));
                })
            .toList();
    Optional<String> sore = sore(order, relief, digit);
    double room = HookRoom.along(order, digit, solids, design.width());
    List<Strap> straps =
        sore.isPresent() ? List.of() : straps(design, girth, digit.pipAxis(), room);
    Closure found =
        new Closure(
            design.kind(),
            ElasticWrap.of(design, laid, girth, levels),
            Sleeve.of(levels, laid.from(), laid.to()),
            tape(design, laid, girth),
            straps,
            solids.size() == 1 && design.kind() == ClosureKind.TAPE
                ? List.of(TAPE_ON_SKIN)
                : List.of());
    return found.with(found.told(sore, room, solids.size() > 1));
  }

  private Closure with(List<Finding> others) {
    return new Closure(kind, wrap, sleeve, tape, straps, others);
  }

  /** What is told of the kind that was chosen, then of the wrap where that serves. */
  private List<Finding> told(Optional<String> sore, double room, boolean shell) {
    List<Finding> told = new ArrayList<>(findings);
    if (kind == ClosureKind.STRAP && straps.isEmpty()) {
      told.add(sore.map(Closure::refusedAsAdvice).orElseGet(() -> noRoom(room, shell)));
    } else if (kind == ClosureKind.SLEEVE && sleeve.parts().isEmpty()) {
      told.add(noWidth(shell));
    }
    if (served() == ClosureKind.WRAP) {
      pressing(wrap).ifPresent(told::add);
    }
    return told;
  }

  private static Finding noRoom(double room, boolean shell) {
    return Finding.caution(
        "strap-no-room",
        "closure.kind",
        String.format(
            Locale.ROOT,
            "There is no room for two straps: their hook would have %.1f mm on the volar side,"
                + " between %s, and needs %.0f mm. Use an elastic wrap%s.",
            room,
            shell ? "the shell's edges" : "the trough's rims",
            2 * Strap.LEAST_FREE,
            shell ? ", or tape (closure.kind: wrap or tape)" : " (closure.kind: wrap)"),
        room,
        2 * Strap.LEAST_FREE);
  }

  private static Finding noWidth(boolean shell) {
    return Finding.caution(
        "sleeve-no-width",
        "closure.kind",
        "No sleeve of one width or of two holds at the thinnest level without pressing too much"
            + " at the thickest. Use an elastic wrap"
            + (shell ? ", or tape (closure.kind: wrap or tape)." : " (closure.kind: wrap)."),
        Double.NaN,
        Double.NaN);
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
                "With a pull of %.2f N the layers of the wrap together press with up to %.1f kPa"
                    + " (%.0f mmHg). The pressure of blood in the smallest vessels is about"
                    + " %.1f kPa (%.0f mmHg), and no pressure is safe for every finger: wind"
                    + " it with less pull, or in fewer layers.",
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
      ClosureDesign design, OuterGirth girth, double axis, double room) {
    return Strap.of(design, axis, girth.at(axis), room)
        .map(strap -> List.of(strap, strap))
        .orElse(List.of());
  }

  /**
   * Round both ends of the dorsal shell within its length, or of the trough's flanks where there is
   * none.
   */
  private static Tape tape(ClosureDesign design, ClosureLayout laid, OuterGirth girth) {
    return new Tape(
        laid.tapes(),
        laid.tapes().stream().map(s -> girth.at(s) + design.lap()).toList(),
        design.width());
  }
}
