package org.midlateral.mechanics.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.HoldingDesign;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.algebra.GroupedRows;
import org.midlateral.mechanics.held.FactoredShell;
import org.midlateral.mechanics.held.SpreadShell;
import org.midlateral.mechanics.joint.JointAnswer.AngleSplit;
import org.midlateral.solid.Solid;
import org.midlateral.work.Interruption;

/**
 * A finger in its orthosis, ready to answer any closure and any moment: meshed, factored, and
 * condensed onto the places that touch. Immutable; may be shared between threads.
 */
public final class HeldFinger {
  /** Length and width of a patch of skin (mm). */
  private static final double PATCH = 3;

  /** Of how the plastic gives way no more is left out, as a share of the largest. */
  private static final double LEFT_OUT = 0.01;

  /** So many times as stiff is as good as rigid. */
  private static final double RIGID = 300;

  /** A trough is looked for from so far into the skin, that some of it touches (mm). */
  private static final double PRESSED_IN = 0.3;

  /** A pull is found to this share. */
  private static final double PULL_TOLERANCE = 1e-3;

  /** Or until it holds the joint so near to the angle (degrees). */
  private static final double ANGLE_TOLERANCE = 5e-3;

  private static final int MOST_PULLS = 40;

  /** From one pull to the next harder one that is tried. */
  private static final double HARDER = 1.5;

  /** A search that leaves more of its largest force out of balance has not ended. */
  private static final double UNBALANCED = 1e-7;

  /** What is all but rigid is looked at only to a tenth of a degree. */
  private static final double UNBALANCED_RIGID = 1e-3;

  private final Fitting fitting;
  private final PressedPieces pieces;
  private final HoldingDesign holding;
  private final Tissue tissue;
  private final GroupedRows rows;

  /** By how much the finger is thicker than that the pieces are made on, by station (mm). */
  private final DoubleUnaryOperator thicker;

  /** From where equilibrium is looked for; empty for the pieces as they are put on. */
  private final Optional<HeldState> near;

  private HeldFinger(
      Fitting fitting,
      PressedPieces pieces,
      HoldingDesign holding,
      GroupedRows rows,
      DoubleUnaryOperator thicker,
      Optional<HeldState> near) {
    this.fitting = fitting;
    this.pieces = pieces;
    this.holding = holding;
    this.rows = rows;
    this.thicker = thicker;
    this.near = near;
    FingerInPieces worn = fitting.worn();
    tissue = new Tissue(holding.skin(), worn.skin().pipAxis(), worn.dipAxis(), 1);
  }

  /**
   * Meshes and factors.
   *
   * @throws DesignRefused where a piece cannot be meshed
   * @throws NotComputable where the middle of a wall folds
   */
  public static HeldFinger of(FingerInPieces worn, HoldingDesign holding)
      throws DesignRefused, NotComputable {
    return of(worn, worn.factored(), holding);
  }

  /**
   * The same of pieces that are meshed and factored.
   *
   * @param bodies that move each for itself: a piece each, or the bonded pair
   */
  public static HeldFinger of(
      FingerInPieces worn, List<FactoredShell> bodies, HoldingDesign holding) {
    return of(worn, bodies, holding, PATCH, LEFT_OUT);
  }

  /** The same on other patches, with more or less of how the plastic gives way. */
  static HeldFinger of(
      FingerInPieces worn,
      List<FactoredShell> bodies,
      HoldingDesign holding,
      double patch,
      double left) {
    List<Solid> solids = bodies.stream().flatMap(body -> body.shell().solids().stream()).toList();
    Fitting fitting = new Fitting(worn, solids, patch);
    PressedPieces pieces = new PressedPieces(fitting, bodies, left);
    return new HeldFinger(fitting, pieces, holding, pieces.rows(), s -> 0, Optional.empty());
  }

  /**
   * Other pieces much like these, as one changed number makes them, without factoring them: they
   * are taken to bend as these do, and each equilibrium is looked for from where this one is. A
   * step of one number leaves the pressure over 1 cm² within 2 % and the angle within 0.2° of those
   * of pieces that are factored, of a trough alone that becomes shallower within 0.5° ({@code
   * core/JOINT.md} has the figures).
   *
   * @param other what is to be computed; of as many pieces
   * @param solids its pieces, as they are meshed for computing
   */
  public HeldFinger carriedTo(FingerInPieces other, List<Solid> solids, HoldingDesign itsHolding) {
    Fitting fitted = new Fitting(other, solids, PATCH);
    PressedPieces carried = pieces.carriedTo(fitted);
    return new HeldFinger(fitted, carried, itsHolding, carried.rows(), s -> 0, near);
  }

  /** The same pieces with other skin, liner or bands. */
  public HeldFinger withHolding(HoldingDesign other) {
    return new HeldFinger(fitting, pieces, other, rows, thicker, near);
  }

  /**
   * The same pieces of a plastic whose modulus is so many times that of the one that was factored,
   * as after a night of creep.
   */
  public HeldFinger withModulus(double factor) {
    GroupedRows softer = pieces.softerRows(1 / factor);
    return new HeldFinger(fitting, pieces, holding, softer, thicker, near);
  }

  /**
   * The same pieces on a finger that is thicker than the one they are made on, or slimmer: gaps are
   * so much smaller.
   *
   * @param by radius more at a station (mm)
   */
  public HeldFinger onThicker(DoubleUnaryOperator by) {
    return new HeldFinger(fitting, pieces, holding, rows, by, near);
  }

  /**
   * The same, looking for each equilibrium from where the joint rests in a closure: half of the
   * steps where the next question is like it.
   *
   * @throws NotComputable where that has no equilibrium
   */
  public HeldFinger near(Fastening fastening, JointMoment moment) throws NotComputable {
    return from(held(fastening, moment));
  }

  /**
   * Its dorsal shell spread at the rims; empty where it has none of its own.
   *
   * @throws NotComputable where that has no rims
   */
  public Optional<SpreadShell> spread() throws NotComputable {
    return fitting.worn().apart()
        ? Optional.of(SpreadShell.of(pieces.bodies().get(1)))
        : Optional.empty();
  }

  Fitting fitting() {
    return fitting;
  }

  PressedPieces pieces() {
    return pieces;
  }

  HoldingDesign holding() {
    return holding;
  }

  /**
   * The joint under a closure.
   *
   * @param moment of the joint
   * @throws NotComputable where no equilibrium is found
   */
  public JointAnswer hold(Fastening fastening, JointMoment moment) throws NotComputable {
    HeldState held = held(fastening, moment);
    return new AnswerReader(held).answer(split(held, fastening, moment));
  }

  /**
   * The joint under a closure, its angle not split and without the band of friction: a third of the
   * work.
   *
   * @throws NotComputable where no equilibrium is found
   */
  public JointAnswer holdWhole(Fastening fastening, JointMoment moment) throws NotComputable {
    return new AnswerReader(held(fastening, moment)).whole();
  }

  /**
   * The angle at which the joint is held under a closure, beyond that asked for (degrees).
   *
   * @throws NotComputable where no equilibrium is found
   */
  public double angle(Fastening fastening, JointMoment moment) throws NotComputable {
    return degrees(held(fastening, moment).resting());
  }

  /** The angle of a joint, no farther than it is followed. */
  private static double degrees(Resting resting) {
    return Math.min(JointAnswer.FARTHEST, Math.toDegrees(resting.angle()));
  }

  /**
   * The least pull to lay a closure with that holds the joint within an angle. It is looked for
   * from the closure's own pull, each equilibrium from where the one before it rests.
   *
   * @param degrees beyond the angle asked for
   * @param least pull to try (N), above 0
   * @param most pull to try (N)
   * @return N; empty where no pull that was tried does
   * @throws NotComputable where no equilibrium is found
   */
  public OptionalDouble leastTension(
      Fastening fastening, JointMoment moment, double degrees, double least, double most)
      throws NotComputable {
    double own = Math.max(least, Math.min(most, fastening.tension()));
    Tried first = tried(fastening.withTension(own), moment, degrees);
    Optional<Tried> holding = holding(first, moment, degrees, least, most);
    if (holding.isEmpty()) {
      return OptionalDouble.empty();
    }
    Tried gentle = holding.get().next(least, moment, degrees);
    return OptionalDouble.of(
        gentle.beyond <= 0 ? least : between(gentle, holding.get(), moment, degrees));
  }

  /**
   * A closure that was tried.
   *
   * @param beyond the angle allowed (degrees)
   */
  private record Tried(HeldFinger finger, Fastening fastening, HeldState held, double beyond) {
    Tried next(double pull, JointMoment moment, double degrees) throws NotComputable {
      return finger.from(held).tried(fastening.withTension(pull), moment, degrees);
    }

    double pull() {
      return fastening.tension();
    }
  }

  private Tried tried(Fastening fastening, JointMoment moment, double degrees)
      throws NotComputable {
    HeldState held = held(fastening, moment);
    return new Tried(this, fastening, held, degrees(held.resting()) - degrees);
  }

  /**
   * A pull that holds the joint: the one at hand, or else the first on the way to harder or to
   * gentler ones, as long as the joint goes no farther by it. A shallow trough bends under the pull
   * itself, so that more is not always better.
   */
  private static Optional<Tried> holding(
      Tried own, JointMoment moment, double degrees, double least, double most)
      throws NotComputable {
    for (double step : new double[] {HARDER, 1 / HARDER}) {
      double last = step > 1 ? most : least;
      Tried at = own;
      Tried before = own;
      while (at.beyond > 0 && at.beyond <= before.beyond && at.pull() != last) {
        before = at;
        at = at.next(Math.max(least, Math.min(most, step * at.pull())), moment, degrees);
      }
      if (at.beyond <= 0) {
        return Optional.of(at);
      }
    }
    return Optional.empty();
  }

  /**
   * The least pull between one that does not hold the joint and one that does: false position on
   * its logarithm, the value of an end that is kept twice halved (Illinois), aimed at the middle of
   * what is good enough.
   */
  private static double between(Tried gentle, Tried hard, JointMoment moment, double degrees)
      throws NotComputable {
    double low = Math.log(gentle.pull());
    double high = Math.log(hard.pull());
    double close = gentle.beyond;
    double far = hard.beyond;
    Tried at = gentle;
    int side = 0;
    for (int k = 0; k < MOST_PULLS && high - low > PULL_TOLERANCE; k++) {
      double aim = (close + ANGLE_TOLERANCE / 2) / (close - far);
      double middle = low + Math.min(1, aim) * (high - low);
      at = at.next(Math.exp(middle), moment, degrees);
      if (at.beyond > 0) {
        low = middle;
        close = at.beyond;
        far /= side > 0 ? 2 : 1;
        side = 1;
      } else {
        high = middle;
        if (at.beyond > -ANGLE_TOLERANCE) {
          break;
        }
        far = at.beyond;
        close /= side < 0 ? 2 : 1;
        side = -1;
      }
    }
    return Math.exp(high);
  }

  /** The same, looking for each equilibrium from where a state rests. */
  private HeldFinger from(HeldState state) {
    return new HeldFinger(fitting, pieces, holding, rows, thicker, Optional.of(state));
  }

  HeldState held(Fastening fastening, JointMoment moment) throws NotComputable {
    return held(tissue, fastening, moment, rows);
  }

  /** The same with pieces that do not give way. */
  HeldState heldRigid(Fastening fastening, JointMoment moment) throws NotComputable {
    return held(tissue, fastening, moment, pieces.rigidRows());
  }

  private HeldState held(Tissue soft, Fastening fastening, JointMoment moment, GroupedRows moves)
      throws NotComputable {
    return held(soft, fastening, fastening, moment, moves);
  }

  /** Laid with one closure, which then stretches as another. */
  private HeldState held(
      Tissue soft, Fastening laying, Fastening holds, JointMoment moment, GroupedRows moves)
      throws NotComputable {
    Interruption.ifInterrupted();
    HeldSystem lay =
        new HeldSystem(
            couplings(soft, laying).laying(), moves, pieces.motions(), new JointMoment(0, 0));
    Resting start =
        near.map(n -> n.laid().turnedTo(0)).orElseGet(() -> Resting.start(lay, 0, pressedIn()));
    Resting laid = Equilibrium.heldAt(lay, start);
    double[] references = new double[fitting.strips().size()];
    for (int k = 0; k < references.length; k++) {
      int e = pieces.firstStrip() + k;
      if (lay.couplings().get(e).law() instanceof Hoop hoop) {
        references[k] = hoop.laid(laid.closing(e));
      }
    }
    HeldSystem hold =
        new HeldSystem(couplings(soft, holds).held(references), moves, pieces.motions(), moment);
    Resting resting = Equilibrium.of(hold, near.map(HeldState::resting).orElse(laid));
    double most = hold.shapes() == 0 ? UNBALANCED_RIGID : UNBALANCED;
    if (Math.max(laid.miss(), resting.miss()) > most) {
      throw new NotComputable("the search for the joint's equilibrium did not end");
    }
    return new HeldState(fitting, pieces, holding, laid, hold, resting);
  }

  private Couplings couplings(Tissue soft, Fastening fastening) {
    return new Couplings(pieces, fitting, soft, liner(soft.factor()), fastening, thicker);
  }

  private List<SoftLayer> liner(double factor) {
    List<SoftLayer> liner = new ArrayList<>();
    double thickness = fitting.worn().liner();
    if (thickness > 0) {
      liner.add(
          new SoftLayer(
              factor * Tissue.MPA_PER_KPA * holding.liner().modulus(),
              holding.liner().stiffening(),
              thickness));
    }
    return liner;
  }

  /** The trough raised and the shell lowered onto the skin. */
  private double[] pressedIn() {
    double axis = fitting.worn().skin().pipAxis();
    Vector3D up = fitting.worn().skin().dorsal(axis);
    double[] motion = new double[PressedPieces.MOTIONS * pieces.bodyCount()];
    for (int b = 0; b < pieces.bodyCount(); b++) {
      double gap = fitting.worn().pieces().get(b).gap().at(0, axis);
      double[] way = up.multiply((b == 0 ? 1 : -1) * (gap + PRESSED_IN)).toArray();
      System.arraycopy(way, 0, motion, PressedPieces.MOTIONS * b, way.length);
    }
    return motion;
  }

  /** Everything rigid at first; then the skin gives way, then the closure, then the plastic. */
  private AngleSplit split(HeldState held, Fastening fastening, JointMoment moment)
      throws NotComputable {
    Fastening taut = fastening.stiffer(RIGID * RIGID);
    GroupedRows rigid = pieces.rigidRows();
    double play = degrees(held(tissue.stiffer(RIGID), fastening, taut, moment, rigid).resting());
    double skin = degrees(held(tissue, fastening, taut, moment, rigid).resting());
    double closure = degrees(held(tissue, fastening, moment, rigid).resting());
    return new AngleSplit(play, skin - play, closure - skin, degrees(held.resting()) - closure);
  }
}
