package org.midlateral.mechanics.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.HoldingDesign;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.joint.JointAnswer.AngleSplit;

/**
 * A finger in its orthosis, ready to answer any closure and any moment: meshed, factored, and
 * condensed onto the places that touch. Immutable; may be shared between threads.
 */
public final class HeldFinger {
  /** Edges of the shell's triangles, times those usual for a piece's wall. */
  private static final double EDGES = 1.6;

  /** Length and width of a patch of skin (mm). */
  private static final double PATCH = 3;

  /** So many times as stiff is as good as rigid. */
  private static final double RIGID = 300;

  /** A trough is looked for from so far into the skin, that some of it touches (mm). */
  private static final double PRESSED_IN = 0.3;

  /** A pull is found to this share. */
  private static final double PULL_TOLERANCE = 1e-3;

  private static final int MOST_PULLS = 40;

  /** A search that leaves more of its largest force out of balance has not ended. */
  private static final double UNBALANCED = 1e-7;

  private final Fitting fitting;
  private final PressedPieces pieces;
  private final HoldingDesign holding;
  private final Tissue tissue;
  private final double[][] compliance;

  private HeldFinger(
      Fitting fitting, PressedPieces pieces, HoldingDesign holding, double[][] compliance) {
    this.fitting = fitting;
    this.pieces = pieces;
    this.holding = holding;
    this.compliance = compliance;
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
    return of(worn, holding, EDGES, PATCH);
  }

  /** The same on other meshes. */
  static HeldFinger of(FingerInPieces worn, HoldingDesign holding, double edges, double patch)
      throws DesignRefused, NotComputable {
    Fitting fitting = new Fitting(worn, edges, patch);
    PressedPieces pieces = new PressedPieces(fitting);
    return new HeldFinger(fitting, pieces, holding, pieces.compliance());
  }

  /** The same pieces with other skin, liner or bands. */
  public HeldFinger withHolding(HoldingDesign other) {
    return new HeldFinger(fitting, pieces, other, compliance);
  }

  /**
   * The same pieces of a plastic whose modulus is so many times that of the one that was factored,
   * as after a night of creep.
   */
  public HeldFinger withModulus(double factor) {
    double[][] scaled = new double[compliance.length][compliance.length];
    for (int i = 0; i < scaled.length; i++) {
      for (int j = 0; j < scaled.length; j++) {
        scaled[i][j] = pieces.compliance()[i][j] / factor;
      }
    }
    return new HeldFinger(fitting, pieces, holding, scaled);
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
    Held held = held(fastening, moment);
    return new Reading(this, held).answer(split(held, fastening, moment));
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
   * The least pull to lay a closure with that holds the joint within an angle.
   *
   * @param degrees beyond the angle asked for
   * @param least pull to try (N), above 0
   * @param most pull to try (N)
   * @return N; empty where the most does not do
   * @throws NotComputable where no equilibrium is found
   */
  public OptionalDouble leastTension(
      Fastening fastening, JointMoment moment, double degrees, double least, double most)
      throws NotComputable {
    if (angle(fastening.withTension(most), moment) > degrees) {
      return OptionalDouble.empty();
    }
    double low = least;
    double high = most;
    if (angle(fastening.withTension(low), moment) <= degrees) {
      return OptionalDouble.of(low);
    }
    for (int k = 0; k < MOST_PULLS && high > low * (1 + PULL_TOLERANCE); k++) {
      double middle = Math.sqrt(low * high);
      if (angle(fastening.withTension(middle), moment) <= degrees) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return OptionalDouble.of(high);
  }

  /**
   * A closure laid, and the joint held by it.
   *
   * @param laid where the pieces lay with the joint held by hand
   * @param system that holds it
   * @param resting where it rests
   */
  record Held(Resting laid, HeldSystem system, Resting resting) {}

  Held held(Fastening fastening, JointMoment moment) throws NotComputable {
    return held(tissue, fastening, moment, compliance);
  }

  /** The same with pieces that do not give way. */
  Held heldRigid(Fastening fastening, JointMoment moment) throws NotComputable {
    return held(tissue, fastening, moment, null);
  }

  private Held held(Tissue soft, Fastening fastening, JointMoment moment, double[][] give)
      throws NotComputable {
    return held(soft, fastening, fastening, moment, give);
  }

  /** Laid with one closure, which then stretches as another. */
  private Held held(
      Tissue soft, Fastening laying, Fastening holds, JointMoment moment, double[][] give)
      throws NotComputable {
    HeldSystem lay =
        new HeldSystem(
            couplings(soft, laying).laying(), pieces.rigid(), give, new JointMoment(0, 0));
    Resting laid = Equilibrium.heldAt(lay, Resting.start(lay, 0, pressedIn()));
    double[] references = new double[fitting.strips().size()];
    for (int k = 0; k < references.length; k++) {
      int e = pieces.firstStrip() + k;
      if (lay.couplings().get(e).law() instanceof Hoop hoop) {
        references[k] = hoop.laid(laid.closing(e));
      }
    }
    HeldSystem hold =
        new HeldSystem(couplings(soft, holds).held(references), pieces.rigid(), give, moment);
    Resting resting = Equilibrium.of(hold, laid);
    if (Math.max(laid.miss(), resting.miss()) > UNBALANCED) {
      throw new NotComputable("the search for the joint's equilibrium did not end");
    }
    return new Held(laid, hold, resting);
  }

  private Couplings couplings(Tissue soft, Fastening fastening) {
    return new Couplings(pieces, fitting, soft, liner(soft.factor()), fastening);
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
    Vector3D up = fitting.worn().skin().tangent(axis).cross(Vector3D.Unit.PLUS_Y).normalize();
    double[] motion = new double[PressedPieces.MOTIONS * pieces.shells().size()];
    for (int b = 0; b < pieces.shells().size(); b++) {
      double gap = fitting.worn().pieces().get(b).gap().at(0, axis);
      double[] way = up.multiply((b == 0 ? 1 : -1) * (gap + PRESSED_IN)).toArray();
      System.arraycopy(way, 0, motion, PressedPieces.MOTIONS * b, way.length);
    }
    return motion;
  }

  /** Everything rigid at first; then the skin gives way, then the closure, then the plastic. */
  private AngleSplit split(Held held, Fastening fastening, JointMoment moment)
      throws NotComputable {
    Fastening taut = fastening.stiffer(RIGID * RIGID);
    double play = degrees(held(tissue.stiffer(RIGID), fastening, taut, moment, null).resting());
    double skin = degrees(held(tissue, fastening, taut, moment, null).resting());
    double closure = degrees(held(tissue, fastening, moment, null).resting());
    return new AngleSplit(play, skin - play, closure - skin, degrees(held.resting()) - closure);
  }
}
