package org.midlateral.pose;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.measurement.PrintProcess;
import org.midlateral.solid.Solid;

/**
 * Looks for the pose of a piece: among the six axes, directions spread evenly and those of its
 * plane of symmetry, all told apart by areas gathered in bins; then, triangle by triangle, among
 * those that need little support; then round the best of them, in ever smaller steps.
 */
public final class PoseSearch {
  /** Directions spread evenly. */
  private static final int DIRECTIONS = 400;

  /** Step between two directions in the plane of symmetry (degrees). */
  private static final int STEP = 5;

  /** Steps round the best (degrees). */
  private static final double[] FINER = {2.5, 1.25, 0.625};

  /** Moves at most with each step. */
  private static final int MOVES = 4;

  /** The criterion in words, for reports. */
  public static final String CRITERION =
      "Least area to be supported, a square millimetre of the skin side counting as "
          + PrintPose.SKIN_WEIGHT
          + ", of the six axes, "
          + DIRECTIONS
          + " directions spread evenly and every "
          + STEP
          + " degrees of the plane of symmetry, then round the best. Of those within "
          + PrintPose.ALIKE
          + " mm² of the least, and no more than its own overhang above it: the broadest footing"
          + " where the piece must stand on the bed, else the lowest.";

  private static final List<Vector3D> AXES =
      List.of(
          Vector3D.Unit.PLUS_X,
          Vector3D.Unit.MINUS_X,
          Vector3D.Unit.PLUS_Y,
          Vector3D.Unit.MINUS_Y,
          Vector3D.Unit.PLUS_Z,
          Vector3D.Unit.MINUS_Z);

  private static final List<Vector3D> ALL = directions();

  private final FacedAreas bins;
  private final TurnedSolid turned;
  private final PrintProcess process;
  private final List<Vector3D> ups;

  private PoseSearch(Solid solid, PrintProcess process) {
    this.bins = FacedAreas.of(solid);
    this.turned = new TurnedSolid(solid, process);
    this.process = process;
    this.ups = ALL.stream().filter(this::isAllowed).toList();
  }

  /** The pose of a piece for a process. */
  public static PrintPose of(Solid solid, PrintProcess process) {
    PoseSearch search = new PoseSearch(solid, process);
    return process.supports() ? search.supported() : search.lowest();
  }

  private boolean isAllowed(Vector3D up) {
    return Math.abs(up.getX()) <= Math.sin(Math.toRadians(process.upright())) + 1e-9;
  }

  /** Where nothing needs support. */
  private PrintPose lowest() {
    Vector3D up = Collections.min(ups, Comparator.comparingDouble(bins::height));
    return turned.pose(refined(up, bins::height));
  }

  private PrintPose supported() {
    double steep = turned.steep();
    double[] rough =
        ups.stream().mapToDouble(up -> bins.under(up, steep, PrintPose.SKIN_WEIGHT)).toArray();
    // Areas in bins are told apart no better than this; what they leave is looked at in full.
    double near = IntStream.range(0, rough.length).mapToDouble(i -> rough[i]).min().orElseThrow();
    List<Vector3D> left =
        IntStream.range(0, rough.length)
            .filter(i -> rough[i] <= near + 2 * PrintPose.ALIKE)
            .mapToObj(ups::get)
            .toList();
    Vector3D first = Collections.min(left, Comparator.comparingDouble(turned::cost));
    Vector3D least = refined(first, turned::cost);
    PrintPose bare = turned.pose(least);
    // Half as much again may be borne for a better stand, never twice as much and more.
    double most = turned.cost(least) + Math.min(PrintPose.ALIKE, bare.overhang());
    ToDoubleFunction<Vector3D> worse =
        up -> {
          if (turned.cost(up) > most) {
            return Double.POSITIVE_INFINITY;
          }
          PrintPose pose = turned.pose(up);
          return process.stands() ? -pose.footing() : pose.height();
        };
    List<Vector3D> tried = new ArrayList<>(left);
    tried.add(least);
    return turned.pose(refined(Collections.min(tried, Comparator.comparingDouble(worse)), worse));
  }

  /** Walks downhill from a direction, in ever smaller steps. */
  private Vector3D refined(Vector3D from, ToDoubleFunction<Vector3D> worse) {
    Vector3D best = from;
    double least = worse.applyAsDouble(from);
    for (double step : FINER) {
      boolean moved = true;
      for (int i = 0; i < MOVES && moved; i++) {
        moved = false;
        for (Vector3D up : round(best, Math.toRadians(step))) {
          double value = isAllowed(up) ? worse.applyAsDouble(up) : Double.POSITIVE_INFINITY;
          if (value < least) {
            least = value;
            best = up;
            moved = true;
          }
        }
      }
    }
    return best;
  }

  /** Four directions round one, two of them in the plane that holds it and the old x. */
  private static List<Vector3D> round(Vector3D up, double angle) {
    Vector3D aside =
        Math.abs(up.getX()) > 0.9 ? Vector3D.Unit.PLUS_Y : up.cross(Vector3D.Unit.PLUS_X);
    Vector3D a = up.cross(aside).normalize();
    Vector3D b = up.cross(a).normalize();
    List<Vector3D> round = new ArrayList<>();
    for (Vector3D way : List.of(a, a.negate(), b, b.negate())) {
      round.add(up.multiply(Math.cos(angle)).add(way.multiply(Math.sin(angle))).normalize());
    }
    return round;
  }

  private static List<Vector3D> directions() {
    List<Vector3D> all = new ArrayList<>(AXES);
    IntStream.range(0, DIRECTIONS).mapToObj(PoseSearch::spiral).forEach(all::add);
    for (int angle = STEP; angle < 360; angle += STEP) {
      if (angle % 90 != 0) {
        double turn = Math.toRadians(angle);
        all.add(Vector3D.of(Math.cos(turn), 0, Math.sin(turn)));
      }
    }
    return List.copyOf(all);
  }

  /** A spiral that spaces directions evenly. */
  private static Vector3D spiral(int i) {
    double z = 1 - (2.0 * i + 1) / DIRECTIONS;
    double turn = i * Math.PI * (3 - Math.sqrt(5));
    double across = Math.sqrt(1 - z * z);
    return Vector3D.of(across * Math.cos(turn), across * Math.sin(turn), z);
  }
}
