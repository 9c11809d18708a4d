package org.midlateral.recipe.rigidity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.JointBlock.JointFigures;
import org.midlateral.mechanics.SupportBlock.Change;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.recipe.Concurrent;
import org.midlateral.recipe.VolarStages;
import org.midlateral.recipe.joint.WornOrthosis;
import org.midlateral.recipe.rigidity.ComparedOrders.ChangedOrder;

/**
 * The troughs that an order's own is compared with, on their way: other shares of the girth, one
 * choice changed at a time, a cast's length. They depend on the order alone, so that they are made
 * on another core while its own pieces still are.
 */
public final class Comparison {
  private final double own;
  private final BendOfPieces by;
  private final List<Double> wraps;
  private final Map<Double, Concurrent<ComparedWrap>> troughs = new TreeMap<>();
  private final List<Concurrent<ComparedChange>> changes = new ArrayList<>();
  private final Concurrent<Optional<JointFigures>> cast;

  /**
   * What one changed choice does.
   *
   * @param change empty where it cannot be made
   * @param findings why
   */
  record ComparedChange(Optional<Change> change, List<Finding> findings) {}

  private Comparison(Order order, List<Double> wraps, BendOfPieces by) {
    ComparedOrders orders = ComparedOrders.of(order);
    Isotropic plastic = HeldPieces.isotropic(order);
    this.own = order.design().trough().wrap();
    this.by = by;
    this.wraps = List.copyOf(wraps);
    // All are held against the half.
    Stream.concat(Stream.of(0.5), wraps.stream())
        .filter(wrap -> wrap != own && wrap != 1)
        .forEach(wrap -> troughs.computeIfAbsent(wrap, w -> begin(orders.wrap(w), plastic, by)));
    orders.changes().forEach(changed -> changes.add(Concurrent.begin(() -> change(changed))));
    // The shortest last: it is what may have to be waited for.
    cast = Concurrent.begin(() -> WornOrthosis.figures(VolarStages.of(orders.castLength())));
  }

  /**
   * Begins.
   *
   * @param wraps shares of the circumference to compare, from 0.2 to 0.6; 1 is the closed tube
   * @param by what their bend is computed by
   */
  public static Comparison begin(Order order, List<Double> wraps, BendOfPieces by) {
    return new Comparison(order, wraps, by);
  }

  private static Concurrent<ComparedWrap> begin(Order order, Isotropic plastic, BendOfPieces by) {
    return Concurrent.begin(
        () -> {
          ComparedTrough trough = ComparedTrough.trough(order);
          return new ComparedWrap(trough, ComparedBend.of(trough, plastic, by));
        });
  }

  /** By what the bend of pieces is computed. */
  BendOfPieces by() {
    return by;
  }

  private static ComparedChange change(ChangedOrder changed) {
    try {
      ComparedTrough made = ComparedTrough.trough(changed.order());
      Change change = made.changed(changed.words(), made.joint());
      return new ComparedChange(Optional.of(change), List.of());
    } catch (DesignRefused e) {
      return new ComparedChange(Optional.empty(), List.of(refused(changed, e)));
    }
  }

  /** A change that cannot be made is left out, with a note. */
  static Finding refused(ChangedOrder changed, DesignRefused why) {
    String text = "Not compared, " + changed.words() + ": " + why.getMessage();
    return Finding.note("change-not-compared", null, text, Double.NaN, Double.NaN);
  }

  /** A wrap that cannot be made is left out, with a note. */
  static Finding refused(double wrap, DesignRefused why) {
    String text =
        String.format(
            Locale.ROOT,
            "A trough over %.2f of the girth cannot be compared: %s",
            wrap,
            why.getMessage());
    return Finding.note("wrap-not-compared", "trough.wrap", text, wrap, Double.NaN);
  }

  /** Does what nobody has begun, in the same order, so that little is left to wait for. */
  void help() {
    troughs.values().forEach(Concurrent::help);
    changes.forEach(Concurrent::help);
    cast.help();
  }

  /** The shares of the circumference that were asked for. */
  List<Double> wraps() {
    return wraps;
  }

  /**
   * The trough of another share than the order's own, 1 excepted.
   *
   * @throws DesignRefused where it cannot be made
   */
  ComparedWrap wrap(double wrap) throws DesignRefused {
    return troughs.get(wrap).end();
  }

  /** What each changed choice does. */
  List<ComparedChange> changes() throws DesignRefused {
    List<ComparedChange> done = new ArrayList<>();
    for (Concurrent<ComparedChange> change : changes) {
      done.add(change.end());
    }
    return done;
  }

  /** How a trough of a cast's length would hold the joint; empty where that has no answer. */
  Optional<JointFigures> cast() {
    try {
      return cast.end();
    } catch (DesignRefused e) {
      return Optional.empty();
    }
  }

  /** Gives up what is not begun yet. */
  public void cancel() {
    troughs.values().forEach(Concurrent::cancel);
    changes.forEach(Concurrent::cancel);
    cast.cancel();
  }
}
