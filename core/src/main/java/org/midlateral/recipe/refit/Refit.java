package org.midlateral.recipe.refit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.rotation.QuaternionRotation;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.SkinFoot;
import org.midlateral.digit.TapedDigit;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.ReadingError;
import org.midlateral.measurement.Room;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.recipe.Orthosis;
import org.midlateral.solid.Solid;

/**
 * How a piece made from one set of measurements sits on a finger measured later. The piece is
 * rigid; it is laid on with the PIP axes over each other and the finger's directions there alike.
 * Gaps are those left to the skin by the trough with its liner in.
 *
 * <p>The angle is read first: where extension was lost or regained by more than a goniometer can
 * tell, that is the verdict, whatever the gaps, which follow from it. A smaller change of the angle
 * is taken for none, and the gaps are those of the finger at the angle the piece was made for.
 *
 * @param piece its name
 * @param asMade mean gap of its inner surface on the finger it was made for (mm)
 * @param min least signed gap of its inner surface to the later skin (mm); negative is pressed in
 * @param minStation where that is, on the later finger (mm)
 * @param minGirth where that is, from the volar midline (mm), positive to the radial side
 * @param mean gap over its inner surface (mm)
 * @param pressedShare share of its inner surface that is pressed into the skin
 * @param deepShare share of it that is pressed in deeper than {@link #TIGHT_DEPTH}
 * @param angleChange later less earlier extension deficit (degrees); positive is extension lost
 * @param levels gap about each level
 * @param verdict what it comes to
 * @param why in a few sentences
 */
public record Refit(
    String piece,
    double asMade,
    double min,
    double minStation,
    double minGirth,
    double mean,
    double pressedShare,
    double deepShare,
    double angleChange,
    List<AtLevel> levels,
    Verdict verdict,
    String why) {

  /** A piece pressed deeper than this over more than a spot is tight (mm). Common practice. */
  public static final double TIGHT_DEPTH = 0.3;

  /** As share of the inside: some 4 mm across, as a fold of skin makes. Common practice. */
  public static final double SPOT = 0.005;

  /** A piece pressed in over more than this share is tight. Common practice, no source. */
  public static final double TIGHT_SHARE = 0.02;

  /** What touches does not press (mm): a piece may be moulded without clearance. */
  private static final double ROUNDING = 1e-6;

  /**
   * A piece that stands off by this more than as made, on the mean about any level, is loose (mm):
   * some 4 mm of circumference. Common practice, no source.
   */
  public static final double LOOSE = 0.6;

  /** Half of the length about a level whose gaps count for it (mm). */
  private static final double ABOUT = 3;

  /** What it comes to. */
  public enum Verdict {
    TIGHT,
    FITS,
    LOOSE,
    /** The joint no longer reaches the angle the piece was made for. */
    EXTENSION_LOST,
    /** The joint goes straighter than the piece holds it. */
    EXTENSION_REGAINED;

    /** As a sentence has it. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /**
   * The gap about one level.
   *
   * @param level its name
   * @param min least gap (mm)
   * @param mean gap (mm)
   * @param asMade mean gap on the finger it was made for (mm)
   * @param circumferenceChange later less earlier tape reading (mm); NaN where the level was not
   *     taped earlier
   */
  public record AtLevel(
      String level, double min, double mean, double asMade, double circumferenceChange) {}

  public Refit {
    levels = List.copyOf(levels);
  }

  private Refit because(String sentences) {
    return new Refit(
        piece,
        asMade,
        min,
        minStation,
        minGirth,
        mean,
        pressedShare,
        deepShare,
        angleChange,
        levels,
        verdict,
        sentences);
  }

  /** Lays each piece of an orthosis on a finger measured later. */
  public static List<Refit> of(Orthosis made, Measurements later) {
    double asMade = made.order().measurements().pipExtensionDeficit();
    double change = Math.toDegrees(later.pipExtensionDeficit() - asMade);
    // As it was read: what was allowed for swelling is in the piece.
    Measurements read = later.withRoom(Room.NONE);
    DigitSurface worn =
        TapedDigit.of(
            ReadingError.GONIOMETER.tells(change) ? read : read.withPipExtensionDeficit(asMade));
    return made.solids().stream()
        .map(s -> new Laid(s, made, worn).measured(later, change))
        .toList();
  }

  /** One piece on the later finger. */
  private static final class Laid {
    private final Solid solid;
    private final Orthosis made;
    private final double[] gap;
    private final double[] before;
    private final double[] weight;
    private int least;
    private double leastStation;
    private double leastGirth;

    Laid(Solid solid, Orthosis made, DigitSurface worn) {
      this.solid = solid;
      this.made = made;
      this.gap = new double[solid.innerVertices()];
      this.before = new double[solid.innerVertices()];
      this.weight = new double[solid.innerVertices()];
      weigh();
      DigitSurface old = made.digit();
      AffineTransformMatrix3D laid = laid(old, worn);
      double liner = solid.piece().dorsal() ? 0 : made.order().design().trough().liner();
      boolean left = made.order().measurements().hand() == Hand.LEFT;
      double shift = worn.pipAxis() - old.pipAxis();
      SkinFoot foot = new SkinFoot(worn);
      SkinFoot own = new SkinFoot(old);
      for (int i = 0; i < gap.length; i++) {
        Vector3D at = solid.mesh().vertex(i);
        own.find(at.getX(), at.getY(), at.getZ(), solid.skinAngle(i), solid.station(i));
        before[i] = own.distance() - liner;
        Vector3D on = laid.apply(at);
        foot.find(on.getX(), on.getY(), on.getZ(), solid.skinAngle(i), solid.station(i) + shift);
        gap[i] = foot.distance() - liner;
        if (gap[i] < gap[least] || i == 0) {
          least = i;
          leastStation = foot.station();
          leastGirth = left ? -foot.girth() : foot.girth();
        }
      }
    }

    /** Takes one finger's PIP axis to the other's, and its direction there likewise. */
    private static AffineTransformMatrix3D laid(DigitSurface old, DigitSurface worn) {
      QuaternionRotation turn =
          QuaternionRotation.createVectorRotation(
              old.tangent(old.pipAxis()), worn.tangent(worn.pipAxis()));
      return AffineTransformMatrix3D.createTranslation(old.centre(old.pipAxis()).negate())
          .rotate(turn)
          .translate(worn.centre(worn.pipAxis()));
    }

    /** A third of the area of each triangle about a vertex. */
    private void weigh() {
      TriangleMesh mesh = solid.mesh();
      for (int t = 0; t < solid.innerTriangles(); t++) {
        for (int c = 0; c < 3; c++) {
          weight[mesh.corner(t, c)] += mesh.area(t) / 3;
        }
      }
    }

    Refit measured(Measurements later, double angleChange) {
      double area = 0;
      double sum = 0;
      double pressed = 0;
      double deep = 0;
      double made = 0;
      for (int i = 0; i < gap.length; i++) {
        area += weight[i];
        sum += weight[i] * gap[i];
        made += weight[i] * before[i];
        pressed += gap[i] < -ROUNDING ? weight[i] : 0;
        deep += gap[i] < -TIGHT_DEPTH ? weight[i] : 0;
      }
      List<AtLevel> levels = levels(later);
      double mean = sum / area;
      double over = 0;
      for (AtLevel level : levels) {
        over = Math.max(over, level.mean() - level.asMade());
      }
      boolean tight = deep > SPOT * area || pressed > TIGHT_SHARE * area;
      Verdict bySeat = tight ? Verdict.TIGHT : over > LOOSE ? Verdict.LOOSE : Verdict.FITS;
      Verdict byAngle = angleChange > 0 ? Verdict.EXTENSION_LOST : Verdict.EXTENSION_REGAINED;
      Refit refit =
          new Refit(
              solid.piece().name(),
              made / area,
              gap[least],
              leastStation,
              leastGirth,
              mean,
              pressed / area,
              deep / area,
              angleChange,
              levels,
              ReadingError.GONIOMETER.tells(angleChange) ? byAngle : bySeat,
              "");
      double liner = solid.piece().dorsal() ? 0 : this.made.order().design().trough().liner();
      return refit.because(new RefitWords(refit, liner, new Lengths(later.unit())).why());
    }

    private List<AtLevel> levels(Measurements later) {
      Measurements earlier = made.order().measurements();
      List<AtLevel> levels = new ArrayList<>();
      for (Map.Entry<Level, Double> taped : later.circumference().entrySet()) {
        Level level = taped.getKey();
        double station = earlier.stationOf(level);
        double min = Double.POSITIVE_INFINITY;
        double sum = 0;
        double own = 0;
        double area = 0;
        for (int i = 0; i < gap.length; i++) {
          if (Math.abs(solid.station(i) - station) <= ABOUT) {
            min = Math.min(min, gap[i]);
            sum += weight[i] * gap[i];
            own += weight[i] * before[i];
            area += weight[i];
          }
        }
        if (area > 0) {
          double tape = earlier.circumference().getOrDefault(level, Double.NaN);
          levels.add(
              new AtLevel(level.key(), min, sum / area, own / area, taped.getValue() - tape));
        }
      }
      return levels;
    }
  }

  /**
   * Says how a piece sits: the angle first, and swelling only where a girth says so.
   *
   * @param refit a piece on the later finger
   * @param liner in the piece (mm)
   * @param lengths as the later finger was measured
   */
  private record RefitWords(Refit refit, double liner, Lengths lengths) {

    /** Why the verdict is what it is, and what to do or ask. */
    String why() {
      return switch (refit.verdict()) {
        case EXTENSION_LOST -> lost();
        case EXTENSION_REGAINED -> regained();
        case TIGHT -> tight();
        case LOOSE -> loose();
        case FITS -> "It sits about as it was made. " + girths();
      };
    }

    private String lost() {
      return angle("lost")
          + String.format(
              Locale.ROOT,
              " Do not force it on: it would be pressed into the skin by up to %.1f mm. Ask how"
                  + " long it was worn, whether the joint hurts or is swollen and whether"
                  + " something happened to it, and show it to whoever is responsible before"
                  + " another is made. ",
              Math.max(0, -refit.min()))
          + girths();
    }

    private String regained() {
      return angle("regained")
          + " It still holds the former angle: remould or reprint it at today's. "
          + girths();
    }

    private String angle(String what) {
      return String.format(
          Locale.ROOT,
          "%.0f° of extension were %s since it was made, more than two readings of a goniometer differ"
              + " by (%.1f°).",
          Math.abs(refit.angleChange()),
          what,
          ReadingError.GONIOMETER.smallestChange());
    }

    private String tight() {
      String pressed =
          String.format(
              Locale.ROOT,
              "%.1f %% of its inside is pressed into the skin, by up to %.2f mm. ",
              100 * refit.pressedShare(),
              Math.max(0, -refit.min()));
      String thinner =
          liner > 0 && -refit.min() <= liner
              ? " A thinner liner gives it room, if nothing else has changed."
              : "";
      return pressed
          + girths()
          + (changed(change -> change > 0).isPresent()
              ? " Do not wear it tight: look for swelling, and remould it or make it again."
              : " Do not wear it tight: measure again, and look for something between finger and"
                  + " piece.")
          + thinner;
    }

    private String loose() {
      String stands =
          String.format(
              Locale.ROOT,
              "It stands off the skin by up to %.2f mm more than when it was made, as the mean"
                  + " around a level. ",
              over());
      return stands
          + girths()
          + (changed(change -> change < 0).isPresent()
              ? " Swelling that went down is the usual reason to remould."
              : " Measure again before it is remade.")
          + String.format(
              Locale.ROOT, " Until then a liner about %.1f mm thicker fills the gap.", over());
    }

    /** By how much more than as made it stands off where it does so most (mm). */
    private double over() {
      return refit.levels().stream().mapToDouble(l -> l.mean() - l.asMade()).max().orElse(0);
    }

    /** The largest change of girth; whether it counts. */
    private String girths() {
      Optional<AtLevel> largest = largest(change -> true);
      if (largest.isEmpty()) {
        return "No level was taped both times.";
      }
      double change = largest.get().circumferenceChange();
      String counts =
          ReadingError.TAPE.tells(change)
              ? "."
              : ", less than two readings of a tape differ by ("
                  + lengths.with(ReadingError.TAPE.smallestChange())
                  + ").";
      return "The largest change of girth is "
          + (change < 0 ? "" : "+")
          + lengths.with(change)
          + " at the "
          + place(largest.get().level())
          + counts;
    }

    private static String place(String key) {
      return Arrays.stream(Level.values())
          .filter(level -> level.key().equals(key))
          .map(Level::words)
          .findFirst()
          .orElseThrow();
    }

    /** A level whose girth has changed by more than a tape can tell, one way. */
    private Optional<AtLevel> changed(Predicate<Double> way) {
      return largest(change -> way.test(change) && ReadingError.TAPE.tells(change));
    }

    private Optional<AtLevel> largest(Predicate<Double> which) {
      return refit.levels().stream()
          .filter(level -> !Double.isNaN(level.circumferenceChange()))
          .filter(level -> which.test(level.circumferenceChange()))
          .max(Comparator.comparingDouble(level -> Math.abs(level.circumferenceChange())));
    }
  }
}
