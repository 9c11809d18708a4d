package org.midlateral.recipe.product;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.Refusals;
import org.midlateral.measurement.Remedy;
import org.midlateral.measurement.file.OrderText;
import org.midlateral.measurement.file.Orders;

/**
 * What to change in a refused order, of which nothing is told that was not tried: for each change
 * the pieces are made and inspected as for an order of its own.
 *
 * <p>Each key is tried at the far end of its usual range first; where that passes, the change is
 * halved as long as it passes. The budget is a number of makings, not of seconds, so that the same
 * order is told the same on every machine.
 */
final class Advice {
  /** So many changes are told at most. */
  static final int MOST = 3;

  /** So many orders are made for them at most; as many again for a trough alone. */
  static final int TRIES = 16;

  /** A change is halved so often at most: to within an eighth of it. */
  private static final int HALVINGS = 3;

  private final String text;
  private final LengthUnit unit;
  private final boolean alone;
  private final Predicate<Order> passes;
  private final List<Candidate> passed = new ArrayList<>();
  private final Set<Candidate> begun = new HashSet<>();
  private final Set<String> tried = new LinkedHashSet<>();
  private int tries;

  private Advice(Order order, boolean alone, Predicate<Order> passes) {
    this.text = OrderText.write(order);
    this.unit = order.measurements().unit();
    this.alone = alone;
    this.passes = passes;
  }

  /**
   * Tries changes of an order whose trough is made, and its dorsal shell refused.
   *
   * @param passes makes and inspects an order
   */
  static Advice onShell(Order order, Finding refusal, Predicate<Order> passes) {
    Advice advice = new Advice(order, false, passes);
    // The trough alone is what was just made.
    advice.passed.add(Candidates.NO_SHELL);
    advice.seek(Candidates.of(order, refusal, true));
    return advice;
  }

  /**
   * Tries changes of an order whose trough is refused. Where none lets both pieces pass, the trough
   * is tried alone.
   *
   * @param passes makes and inspects an order
   */
  static Advice onTrough(Order order, Finding refusal, Predicate<Order> passes) {
    List<Candidate> candidates = Candidates.of(order, refusal, false);
    Advice advice = new Advice(order, false, passes);
    advice.seek(candidates);
    if (advice.passed.isEmpty() && order.design().dorsalShell().make()) {
      advice = new Advice(order, true, passes);
      advice.seek(candidates);
    }
    return advice;
  }

  private void seek(List<Candidate> candidates) {
    for (Candidate candidate : candidates) {
      if (passed.size() == MOST || tries == TRIES) {
        break;
      }
      boolean known = passed.stream().anyMatch(other -> other.key().equals(candidate.key()));
      if (!known && candidate.isChange() && begun.add(candidate) && passes(candidate)) {
        passed.add(candidate);
      }
    }
    passed.replaceAll(this::nearest);
  }

  /** The least change of the same key that passes, as far as it is sought. */
  private Candidate nearest(Candidate found) {
    Candidate nearest = found;
    double from = found.now();
    for (int i = 0; i < HALVINGS && found.word() == null && tries < TRIES; i++) {
      Candidate nearer = nearest.halved(from);
      if (nearer.equals(nearest)) {
        break;
      }
      if (passes(nearer)) {
        nearest = nearer;
      } else {
        from = nearer.end();
      }
    }
    return nearest;
  }

  private boolean passes(Candidate candidate) {
    tries++;
    tried.add(candidate.key());
    Orders.Result read = Orders.parse(text, "", candidate.remedy(unit, alone).entries());
    return read.ok() && passes.test(read.order());
  }

  /** A refusal with what passes, the least change first. */
  Finding to(Finding refusal) {
    List<Remedy> remedies =
        passed.stream()
            .sorted(Comparator.comparingDouble(Candidate::far))
            .limit(MOST)
            .map(candidate -> candidate.remedy(unit, alone))
            .toList();
    return Refusals.advised(refusal, remedies, tried);
  }
}
