package org.midlateral.recipe.rigidity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.midlateral.measurement.Design.ClosureKind;
import org.midlateral.measurement.Design.DistalEnd;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.NotComputable;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.key.Shown;
import org.midlateral.mechanics.joint.Fastening;
import org.midlateral.mechanics.joint.HeldFinger;
import org.midlateral.mechanics.joint.JointAnswer;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.joint.JointWords;
import org.midlateral.recipe.joint.WornOrthosis;
import org.midlateral.work.Interruption;

/**
 * Which designs near to one hold the joint within an angle, and at what pressure: wall, wrap, ends
 * and dorsal shell are changed one by one and in pairs, and each is closed by wrap, strap or tape
 * with the least pull that does.
 */
public final class Adviser {
  private static final double THICKER = 0.4;
  private static final double LONGER = 2;
  private static final double LEAST_MARGIN = 2;

  /** Pulls that are tried (N); nobody lays a band with less than the first. */
  private static final double LEAST_PULL = 0.1;

  private static final double MOST_PULL = 3;

  /** So many designs are told, beside the one asked about. */
  private static final int TOLD = 5;

  /**
   * What was found.
   *
   * @param within the angle asked for (degrees)
   * @param own the design as it is
   * @param better those that hold the joint, the least pressed first
   */
  public record DesignAdvice(double within, Advised own, List<Advised> better) {
    public DesignAdvice {
      better = List.copyOf(better);
    }
  }

  /**
   * A design.
   *
   * @param design what is changed, in words
   * @param settings the same and its closure, as {@code KEY=VALUE}
   * @param closure by which it is closed
   * @param tension the closure is laid with (N)
   * @param angleHeld degrees beyond the angle asked for
   * @param peakPressure largest mean over 1 cm² (MPa)
   */
  public record Advised(
      String design,
      List<String> settings,
      String closure,
      double tension,
      double angleHeld,
      double peakPressure) {
    public Advised {
      settings = List.copyOf(settings);
    }
  }

  /**
   * A change of a design.
   *
   * @param settings as {@code KEY=VALUE}
   */
  private record Change(String words, List<String> settings, Order order) {}

  private Adviser() {}

  /**
   * Advice for an orthosis.
   *
   * @param within the angle that the joint is to be held within (degrees)
   * @throws DesignRefused where its own pieces cannot be meshed for it
   * @throws NotComputable where there is no answer for it
   */
  public static DesignAdvice of(Orthosis made, double within) throws DesignRefused, NotComputable {
    WornOrthosis worn = WornOrthosis.of(made);
    JointAnswer answer = worn.finger().holdWhole(worn.fastening(), worn.moment());
    Change none = new Change("as it is", List.of(), made.order());
    Advised own = row(none, List.of(), worn.closure(), worn.fastening(), answer);
    List<Advised> found = new ArrayList<>(closed(none, worn, within));
    for (Change change : changes(made.order())) {
      Interruption.ifInterrupted();
      try {
        found.addAll(closed(change, WornOrthosis.of(Orthosis.make(change.order)), within));
      } catch (DesignRefused | NotComputable e) {
        // What cannot be made or computed is no advice.
      }
    }
    found.sort(Comparator.comparingDouble(Advised::peakPressure));
    return new DesignAdvice(within, own, found.subList(0, Math.min(TOLD, found.size())));
  }

  private static List<Advised> closed(Change change, WornOrthosis worn, double within)
      throws NotComputable {
    List<Advised> rows = new ArrayList<>();
    boolean shell = worn.made().plainShell().isPresent();
    for (ClosureKind kind : ClosureKind.values()) {
      boolean fits =
          switch (kind) {
            case WRAP, SLEEVE -> kind == ClosureKind.WRAP || kind == worn.closure();
            case TAPE -> shell;
            case STRAP -> worn.takesStraps();
          };
      if (fits) {
        closed(change, worn, kind, within, rows);
      }
    }
    return rows;
  }

  private static void closed(
      Change change, WornOrthosis worn, ClosureKind kind, double within, List<Advised> rows)
      throws NotComputable {
    Fastening fastening = worn.fastening(kind);
    HeldFinger near = worn.finger().near(fastening, worn.moment());
    OptionalDouble least =
        near.leastTension(fastening, worn.moment(), within, LEAST_PULL, MOST_PULL);
    if (least.isPresent()) {
      Fastening laid = fastening.withTension(JointWords.enough(least.getAsDouble()));
      List<String> settings = new ArrayList<>(change.settings);
      if (kind != worn.closure()) {
        settings.add("closure.kind=" + kind.name().toLowerCase(Locale.ROOT));
      }
      String pull = kind == ClosureKind.TAPE ? "closure.tape-tension" : "closure.tension";
      settings.add(String.format(Locale.ROOT, "%s=%.2f", pull, laid.tension()));
      rows.add(row(change, settings, kind, laid, near.holdWhole(laid, worn.moment())));
    }
  }

  private static Advised row(
      Change change,
      List<String> settings,
      ClosureKind kind,
      Fastening fastening,
      JointAnswer answer) {
    return new Advised(
        change.words,
        settings,
        kind.name().toLowerCase(Locale.ROOT),
        fastening.tension(),
        answer.angle(),
        answer.squareCentimetre().pressure());
  }

  private static List<Change> changes(Order order) {
    double wall = order.design().trough().wall();
    boolean shell = order.design().dorsalShell().make();
    List<Change> changes = new ArrayList<>();
    changes.add(
        new Change(
            String.format(Locale.ROOT, "wall %.1f mm", wall + THICKER),
            List.of(length(order, "trough.wall", wall + THICKER)),
            Variant.wall(order, wall + THICKER)));
    for (double wrap : new double[] {0.45, 0.5, 0.55}) {
      if (Math.abs(wrap - order.design().trough().wrap()) > 0.01) {
        changes.add(
            new Change(
                String.format(Locale.ROOT, "%.2f of the girth", wrap),
                List.of(String.format(Locale.ROOT, "trough.wrap=%.2f", wrap)),
                Variant.wrap(order, wrap)));
      }
    }
    Order longer = longer(order);
    Order other = shell ? Variant.withoutShell(order) : Variant.withShell(order);
    String toggled = shell ? "no dorsal shell" : "with a dorsal shell";
    List<String> margins = margins(longer);
    String toggle = "dorsal-shell.make=" + (shell ? "no" : "yes");
    changes.add(new Change("ends 2 mm longer", margins, longer));
    changes.add(new Change(toggled, List.of(toggle), other));
    List<String> both = new ArrayList<>(List.of(toggle));
    both.addAll(margins);
    changes.add(
        new Change(
            toggled + ", ends 2 mm longer",
            both,
            shell ? Variant.withoutShell(longer) : Variant.withShell(longer)));
    return changes;
  }

  private static List<String> margins(Order longer) {
    var trough = longer.design().trough();
    List<String> margins = new ArrayList<>();
    margins.add(length(longer, "trough.proximal-margin", trough.proximalMargin()));
    if (trough.distal() != DistalEnd.COVERED) {
      margins.add(length(longer, "trough.distal-margin", trough.distalMargin()));
    }
    return margins;
  }

  /** A length as the order's file would have it. */
  private static String length(Order order, String key, double value) {
    String unit = order.measurements().unit() == LengthUnit.MM ? "" : " mm";
    return key + "=" + Shown.number(value) + unit;
  }

  private static Order longer(Order order) {
    var trough = order.design().trough();
    double proximal = Math.min(LONGER, Math.max(0, trough.proximalMargin() - LEAST_MARGIN));
    double distal =
        trough.distal() == DistalEnd.COVERED
            ? 0
            : Math.min(LONGER, Math.max(0, trough.distalMargin() - LEAST_MARGIN));
    return order.withDesign(
        order
            .design()
            .withTrough(
                trough
                    .withProximalMargin(trough.proximalMargin() - proximal)
                    .withDistalMargin(trough.distalMargin() - distal)));
  }
}
