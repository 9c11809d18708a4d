package org.midlateral.recipe.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.midlateral.measurement.Design.ClosureKind;
import org.midlateral.measurement.Design.ProcessDesign;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.HoldingDesign.JointDesign;
import org.midlateral.measurement.Material;
import org.midlateral.measurement.NotComputable;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.JointBlock.OtherClosure;
import org.midlateral.mechanics.JointBlock.Overnight;
import org.midlateral.mechanics.joint.Fastening;
import org.midlateral.mechanics.joint.HeldFinger;
import org.midlateral.mechanics.joint.JointAnswer;
import org.midlateral.recipe.Orthosis;
import org.midlateral.work.Interruption;

/**
 * How an orthosis holds the joint.
 *
 * @param worn the orthosis on its finger
 * @param answer the joint as it is held
 * @param leastTension with which its closure would hold the joint within the angle asked for (N);
 *     empty where no pull does
 * @param instead other closures of the same pieces; none where its own holds the joint
 * @param overnight what is left in the morning; empty where nothing is known of the material
 * @param puttingOn what pushing the dorsal shell on takes; empty where it just drops on
 * @param bands how far angle and pressure may be off; empty where that was not asked for, or has no
 *     answer
 */
public record JointHeld(
    WornOrthosis worn,
    JointAnswer answer,
    OptionalDouble leastTension,
    List<OtherClosure> instead,
    Optional<Overnight> overnight,
    Optional<PuttingOn> puttingOn,
    Optional<AngleBands> bands) {

  /** Pulls that are tried (N for each layer). */
  private static final double LEAST_PULL = 0.05;

  private static final double MOST_PULL = 6;

  public JointHeld {
    instead = List.copyOf(instead);
  }

  /**
   * Asks everything of an orthosis.
   *
   * @throws DesignRefused where a piece cannot be meshed for it
   * @throws NotComputable where there is no answer
   */
  public static JointHeld of(Orthosis made) throws DesignRefused, NotComputable {
    return withoutBands(made).withBands();
  }

  /**
   * Asks everything of an orthosis on its finger.
   *
   * @throws NotComputable where there is no answer
   */
  public static JointHeld of(WornOrthosis worn) throws NotComputable {
    return withoutBands(worn).withBands();
  }

  /**
   * Asks all but how far angle and pressure may be off.
   *
   * @throws DesignRefused where a piece cannot be meshed for it
   * @throws NotComputable where there is no answer
   */
  public static JointHeld withoutBands(Orthosis made) throws DesignRefused, NotComputable {
    return withoutBands(WornOrthosis.of(made));
  }

  /**
   * The same of an orthosis on its finger.
   *
   * @throws NotComputable where there is no answer
   */
  public static JointHeld withoutBands(WornOrthosis laid) throws NotComputable {
    Interruption.ifInterrupted();
    WornOrthosis worn = laid.settled();
    JointAnswer answer = worn.answer();
    HeldFinger near = worn.finger();
    double within = within(worn.made().order());
    Interruption.ifInterrupted();
    OptionalDouble least =
        near.leastTension(worn.fastening(), worn.moment(), within, LEAST_PULL, MOST_PULL);
    Interruption.ifInterrupted();
    List<OtherClosure> instead = answer.holdsWithin(within) ? List.of() : others(worn);
    return new JointHeld(
        worn, answer, least, instead, overnight(worn, near), PuttingOn.of(worn), Optional.empty());
  }

  /** The same with its bands, where each error that is tried has an answer. */
  private JointHeld withBands() throws NotComputable {
    Optional<AngleBands> found;
    try {
      found = Optional.of(AngleBands.of(worn, worn.finger(), answer));
    } catch (NotComputable without) {
      found = Optional.empty();
    }
    return new JointHeld(worn, answer, leastTension, instead, overnight, puttingOn, found);
  }

  private static double within(Order order) {
    JointDesign joint = order.design().holding().joint();
    return Math.toDegrees(joint.within());
  }

  /** The angle the joint is to be held within (degrees). */
  public double within() {
    return within(worn.made().order());
  }

  /** Whether it is. */
  public boolean holds() {
    return answer.holdsWithin(within());
  }

  /** Straps and, over a shell, tape; only what is not chosen already, the best first. */
  private static List<OtherClosure> others(WornOrthosis worn) throws NotComputable {
    boolean shell = worn.made().plainShell().isPresent();
    ClosureKind chosen = worn.closure();
    List<OtherClosure> others = new ArrayList<>();
    for (ClosureKind kind : ClosureKind.values()) {
      boolean fits =
          switch (kind) {
            case WRAP, SLEEVE -> false;
            case TAPE -> shell;
            case STRAP -> worn.takesStraps();
          };
      if (fits && kind != chosen) {
        Fastening other = worn.fastening(kind);
        others.add(
            new OtherClosure(
                name(kind), other.tension(), worn.finger().angle(other, worn.moment())));
      }
    }
    others.sort(Comparator.comparingDouble(OtherClosure::angleHeld));
    return others;
  }

  private static Optional<Overnight> overnight(WornOrthosis worn, HeldFinger near)
      throws NotComputable {
    Optional<Night> night = Night.of(worn.made().order());
    if (night.isEmpty()) {
      return Optional.empty();
    }
    Night left = night.get();
    double[] angles = new double[3];
    double[] shares = {left.share(), left.high(), left.low()};
    for (int k = 0; k < angles.length; k++) {
      HeldFinger softer = near.withModulus(shares[k]);
      angles[k] = softer.angle(worn.fastening(), worn.moment());
    }
    return Optional.of(
        new Overnight(angles[0], left.share(), left.source(), List.of(angles[1], angles[2])));
  }

  static String name(ClosureKind kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }

  /**
   * What is left of a material's modulus after 8 hours at 34 °C.
   *
   * @param share most likely, dry
   * @param low least, when moist and, of a filament print, across its layers
   * @param high most
   * @param source where it comes from
   */
  record Night(double share, double low, double high, String source) {

    /** That of an order; empty where nothing is known. */
    static Optional<Night> of(Order order) {
      boolean layered = order.design().print().process() == ProcessDesign.FILAMENT;
      double across = layered ? order.design().holding().acrossLayers() : 1;
      OptionalDouble own = order.design().holding().creep();
      if (own.isPresent()) {
        double share = own.getAsDouble();
        return Optional.of(new Night(share, across * share, share, "your own value"));
      }
      Material material = Material.of(order.design().material());
      String source =
          material.sources().get("creep") + "; moist " + material.sources().get("moist");
      return material
          .overnight()
          .map(c -> new Night(c.share(), across * c.moist() * c.low(), c.high(), source));
    }
  }
}
