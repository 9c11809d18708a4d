package org.midlateral.recipe.product;

import java.util.ArrayList;
import java.util.List;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.Design.Bubble;
import org.midlateral.measurement.Design.DorsalShellDesign;
import org.midlateral.measurement.Design.ReliefDesign;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.shell.DorsalShell;

/**
 * Which changes a refused order is tried with, by the refusal's code: first what the refusal is
 * about, then what else has been seen to help. Ends of usual ranges are those of the key table.
 */
final class Candidates {
  /** Leaves the dorsal shell out. */
  static final Candidate NO_SHELL = Candidate.word("dorsal-shell.make", "no");

  /** Bubbles that are lowered one by one. */
  private static final int MOST_BUBBLES = 3;

  private final Order order;
  private final TroughDesign trough;
  private final ReliefDesign relief;
  private final DorsalShellDesign shell;
  private final List<Candidate> all = new ArrayList<>();

  private Candidates(Order order) {
    Design design = order.design();
    this.order = order;
    this.trough = design.trough();
    this.relief = design.relief();
    this.shell = design.dorsalShell();
  }

  /**
   * The changes to try.
   *
   * @param refusal of the order
   * @param ofShell whether it is the dorsal shell's alone
   */
  static List<Candidate> of(Order order, Finding refusal, boolean ofShell) {
    Candidates candidates = new Candidates(order);
    if (refusal.code().equals("lever-arm-short")) {
      // The pieces can be made as they are: trying them would say nothing.
      return candidates.all;
    }
    candidates.direct(refusal);
    if (ofShell) {
      candidates.shell();
    }
    candidates.trough();
    return candidates.all;
  }

  /** What the refusal itself tells. */
  private void direct(Finding refusal) {
    switch (refusal.code()) {
      case "tongue-short" -> {
        number("trough.proximal-margin", trough.proximalMargin(), 0);
        number("trough.web-clearance", trough.webClearance(), 6);
      }
      case "distal-end-narrow" -> {
        number("trough.distal-margin", trough.distalMargin(), 12);
        all.add(Candidate.word("trough.distal", "covered"));
      }
      case "relief-station", "relief-girth" -> {
        double down = Math.floor(10 * refusal.limit() - 1e-9) / 10;
        nearest(refusal.key(), refusal.value(), Math.copySign(down, now(refusal)));
        all.add(Candidate.word("relief.bubbles", "[]"));
      }
      case "dorsal-shell-overlap" ->
          nearest("dorsal-shell.overlap", shell.overlap(), down(refusal.limit()));
      case "dorsal-shell-length" -> {
        double lacking = Math.max(refusal.value(), DorsalShell.SHORTEST) - refusal.limit();
        double less = down(Math.max(0, lacking) / 2) + 0.1;
        nearest("dorsal-shell.length", refusal.value(), down(refusal.limit()));
        nearest("trough.web-clearance", trough.webClearance(), trough.webClearance() - less);
        nearest("trough.distal-margin", trough.distalMargin(), trough.distalMargin() - less);
      }
      case "dorsal-shell-step" ->
          nearest("dorsal-shell.clearance", shell.clearance(), down(refusal.limit()));
      default -> {
        return;
      }
    }
  }

  /** The next lower round length (mm). */
  private static double down(double limit) {
    return Math.floor(10 * limit + 1e-9) / 10;
  }

  /** The number of a bubble's key, with its sign. */
  private double now(Finding refusal) {
    for (int i = 0; i < relief.bubbles().size(); i++) {
      Bubble bubble = relief.bubbles().get(i);
      if (refusal.key().equals("relief.bubbles[" + i + "].girth")) {
        return bubble.girth();
      }
    }
    return refusal.value();
  }

  /** What the shell's shape hangs on. */
  private void shell() {
    number("dorsal-shell.overlap", shell.overlap(), 2);
    number("dorsal-shell.wall", shell.wall().orElse(trough.wall()), 1);
    number("dorsal-shell.length", length(), 15);
    number("dorsal-shell.clearance", shell.clearance(), 1.5);
    number("trough.wrap", trough.wrap(), 0.5);
    number("dorsal-shell.length", length(), 36);
    number("dorsal-shell.fit-gap", shell.fitGap(), 0.6);
    number("dorsal-shell.fit-gap", shell.fitGap(), 0.2);
  }

  /** What the trough's shape hangs on. */
  private void trough() {
    number("trough.wall", trough.wall(), 1.2);
    number("trough.corner", trough.corner(), 8);
    number("trough.liner", trough.liner(), 0);
    number("relief.height", relief.height(), 0.3);
    if (relief.bubbles().isEmpty()) {
      // Bubbles may take these for their own: then two things would be changed at once.
      number("relief.length", relief.length(), 14);
      number("relief.width", relief.width(), 12);
    }
    for (int i = 0; i < relief.bubbles().size() && i < MOST_BUBBLES; i++) {
      number("relief.bubbles[" + i + "].height", relief.bubbles().get(i).height(), 0.1);
    }
    number("trough.flare", trough.flare(), 0);
    number("trough.flare-width", trough.flareWidth(), 10);
    number("trough.wrap", trough.wrap(), 0.5);
    number("trough.web-clearance", trough.webClearance(), 6);
    number("trough.web-clearance", trough.webClearance(), 2);
    all.add(Candidate.word("relief.make", "no"));
    if (!relief.bubbles().isEmpty()) {
      all.add(Candidate.word("relief.bubbles", "[]"));
    }
    if (order.design().print().label()) {
      all.add(Candidate.word("print.label", "no"));
    }
  }

  /** The shell's length, or about what it is where it follows the trough's (mm). */
  private double length() {
    Measurements m = order.measurements();
    double whole =
        m.palmarCreaseToWeb()
            - trough.proximalMargin()
            + m.webToPip()
            + m.pipToDip()
            + m.dipToTip()
            - trough.distalMargin();
    return shell.length().orElse(Math.rint(5 * whole) / 10);
  }

  private void number(String key, double now, double end) {
    all.add(Candidate.number(key, now, end));
  }

  private void nearest(String key, double now, double end) {
    all.add(Candidate.nearest(key, now, end));
  }
}
