package org.midlateral.viewer.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.mechanics.AreaMoments;
import org.midlateral.mechanics.Loop;
import org.midlateral.mechanics.Profile;
import org.midlateral.mechanics.RigidityBlock;
import org.midlateral.mechanics.SectionPlane;
import org.midlateral.mechanics.Sections;
import org.midlateral.mechanics.ThreePoint;
import org.midlateral.mechanics.joint.JointAnswer.AngleSplit;
import org.midlateral.recipe.joint.JointHeld;
import org.midlateral.recipe.rigidity.Rigidity;

/**
 * Why a wrap is stiffer, and why that is not all: what the lesson's last steps are drawn from.
 *
 * @param wraps each with its section at the PIP axis and its EI along the finger
 * @param ring the order's own pieces, slipping and bonded; empty where it has no dorsal shell
 * @param split what the joint's angle is made of; empty where it has no answer
 * @param support the three forces
 * @param skin the finger's section at the PIP axis: y and n (mm)
 */
record Reasons(
    List<WrapReason> wraps,
    Optional<RingReason> ring,
    Optional<AngleSplit> split,
    ThreePoint support,
    Loop skin) {
  /** Points round the skin. */
  private static final int AROUND = 120;

  /** The farthest that a point of a section is drawn off its place (mm). */
  private static final double LONGEST = 3;

  /**
   * One wrap.
   *
   * @param title what it is called
   * @param loops of its section at the PIP axis: y and n (mm)
   * @param moments of that section; its centroid lies on the neutral axis
   * @param bending EI there (N·mm²)
   * @param stations along the finger (mm)
   * @param bendings EI at each (N·mm²)
   * @param section before the load and under it; empty where that could not be computed
   * @param rims by how much they open under the load (mm), less than zero where they close; empty
   *     where it has none or that could not be computed
   * @param pull of the closure on either rim (N)
   */
  record WrapReason(
      String title,
      List<Loop> loops,
      AreaMoments moments,
      double bending,
      List<Double> stations,
      List<Double> bendings,
      Optional<LoadedSection> section,
      Optional<Double> rims,
      double pull) {
    WrapReason {
      loops = List.copyOf(loops);
      stations = List.copyOf(stations);
      bendings = List.copyOf(bendings);
    }

    /** How far the material reaches dorsally of the neutral axis, or volarly for a sign of -1. */
    double reach(int sign) {
      double most = 0;
      for (Loop loop : loops) {
        for (int i = 0; i < loop.size(); i++) {
          most = Math.max(most, sign * (loop.n(i) - moments.n()));
        }
      }
      return most;
    }
  }

  /**
   * EI at the PIP axis of a ring of two pieces (N·mm²).
   *
   * @param trough alone
   * @param slipping both, each for itself
   * @param bonded both as one
   */
  record RingReason(double trough, double slipping, double bonded) {}

  Reasons {
    wraps = List.copyOf(wraps);
  }

  static Reasons of(Rigidity rigidity) {
    DigitSurface digit = rigidity.orthosis().digit();
    double pip = digit.pipAxis();
    List<WrapReason> wraps = new ArrayList<>();
    for (int i = 0; i < rigidity.curves().size(); i++) {
      wraps.add(wrap(rigidity.curves().get(i), rigidity.rigidity().wraps().get(i), digit, pip));
    }
    Optional<RingReason> ring =
        rigidity
            .bonded()
            .map(
                bonded ->
                    new RingReason(
                        at(rigidity.trough(), pip),
                        at(rigidity.slipping().orElseThrow(), pip),
                        at(bonded, pip)));
    Optional<AngleSplit> split =
        rigidity.joint().map(JointHeld::answer).filter(a -> a.held()).map(a -> a.split());
    return new Reasons(wraps, ring, split, rigidity.support(), skin(digit, pip));
  }

  private static Loop skin(DigitSurface digit, double station) {
    SectionPlane plane = SectionPlane.at(digit, station);
    Slice slice = digit.slice(station);
    double[] yn = new double[2 * AROUND];
    for (int i = 0; i < AROUND; i++) {
      Vector3D at = plane.origin().vectorTo(slice.point(2 * Math.PI * i / AROUND));
      yn[2 * i] = at.getY();
      yn[2 * i + 1] = at.dot(plane.dorsal());
    }
    return new Loop(yn);
  }

  /** How far dorsal the finger reaches: n (mm). */
  double back() {
    double most = 0;
    for (int i = 0; i < skin.size(); i++) {
      most = Math.max(most, skin.n(i));
    }
    return most;
  }

  /** What all changes of shape are multiplied by: a round number. */
  double exaggeration() {
    double most =
        wraps.stream()
            .flatMap(wrap -> wrap.section().stream())
            .mapToDouble(LoadedSection::farthest)
            .max()
            .orElse(1);
    return Exaggeration.below(LONGEST / most);
  }

  private static WrapReason wrap(
      Rigidity.Curve curve, RigidityBlock.Wrap figures, DigitSurface digit, double pip) {
    List<Loop> loops =
        Sections.of(digit, curve.solids()).loops(pip).stream().flatMap(List::stream).toList();
    List<Profile.BeamPanel> panels = curve.profile().panels();
    return new WrapReason(
        WrapTitle.of(figures),
        loops,
        AreaMoments.of(loops),
        figures.bendingAtPip(),
        panels.stream().map(Profile.BeamPanel::middle).toList(),
        panels.stream().map(panel -> curve.profile().bending(panel.section())).toList(),
        curve
            .held()
            .map(
                held ->
                    LoadedSection.of(held, ElasticMotion.of(held, curve.support()), digit, pip)),
        figures.wrap() == 1
            ? Optional.empty()
            : Optional.ofNullable(figures.finiteElements())
                .map(RigidityBlock.WrapByShell::rimOpening),
        curve.support().pipForce() / 2);
  }

  private static double at(Profile profile, double station) {
    return profile.panels().stream()
        .min(Comparator.comparingDouble(panel -> Math.abs(panel.middle() - station)))
        .map(panel -> profile.bending(panel.section()))
        .orElseThrow();
  }
}
