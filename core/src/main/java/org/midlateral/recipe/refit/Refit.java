package org.midlateral.recipe.refit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.rotation.QuaternionRotation;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.SkinFoot;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.recipe.Orthosis;
import org.midlateral.solid.Solid;

/**
 * How a piece made from one set of measurements sits on a finger measured later. The piece is
 * rigid; it is laid on with the PIP axes over each other and the finger's directions there alike.
 * Gaps are those left to the skin by the trough with its liner in.
 *
 * @param piece its name
 * @param asMade mean gap of its inner surface on the finger it was made for (mm)
 * @param min least signed gap of its inner surface to the later skin (mm); negative is pressed in
 * @param minStation where that is, on the later finger (mm)
 * @param minGirth where that is, from the volar midline (mm), positive to the radial side
 * @param mean gap over its inner surface (mm)
 * @param pressedShare share of its inner surface that is pressed into the skin
 * @param levels gap about each level
 * @param verdict tight, fits or loose
 * @param why in one or two sentences
 */
public record Refit(
    String piece,
    double asMade,
    double min,
    double minStation,
    double minGirth,
    double mean,
    double pressedShare,
    List<AtLevel> levels,
    Verdict verdict,
    String why) {

  /** A piece pressed deeper than this anywhere is tight (mm). Common practice, no source. */
  public static final double TIGHT_DEPTH = 0.3;

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
    LOOSE
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

  /** Lays each piece of an orthosis on a finger measured later. */
  public static List<Refit> of(Orthosis made, Measurements later) {
    DigitSurface worn = TapedDigit.of(later);
    return made.solids().stream().map(s -> new Laid(s, made, worn).measured(later)).toList();
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

    Refit measured(Measurements later) {
      double area = 0;
      double sum = 0;
      double pressed = 0;
      double made = 0;
      for (int i = 0; i < gap.length; i++) {
        area += weight[i];
        sum += weight[i] * gap[i];
        made += weight[i] * before[i];
        pressed += gap[i] < -ROUNDING ? weight[i] : 0;
      }
      List<AtLevel> levels = levels(later);
      double mean = sum / area;
      double share = pressed / area;
      double over = 0;
      for (AtLevel level : levels) {
        over = Math.max(over, level.mean() - level.asMade());
      }
      Verdict verdict =
          gap[least] < -TIGHT_DEPTH || share > TIGHT_SHARE
              ? Verdict.TIGHT
              : over > LOOSE ? Verdict.LOOSE : Verdict.FITS;
      return new Refit(
          solid.piece().name(),
          made / area,
          gap[least],
          leastStation,
          leastGirth,
          mean,
          share,
          levels,
          verdict,
          why(verdict, levels, gap[least], share, over));
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

  private static String why(
      Verdict verdict, List<AtLevel> levels, double min, double share, double over) {
    AtLevel most = levels.get(0);
    for (AtLevel level : levels) {
      if (Math.abs(level.circumferenceChange()) > Math.abs(most.circumferenceChange())) {
        most = level;
      }
    }
    String change =
        String.format(
            Locale.ROOT,
            "The largest change of girth is %+.1f mm at %s",
            most.circumferenceChange(),
            most.level());
    return switch (verdict) {
      case TIGHT ->
          String.format(
              Locale.ROOT,
              "%.0f %% of its inside is pressed into the skin, by up to %.2f mm. %s. Do not wear it"
                  + " tight: look for swelling, and remould or make it anew.",
              100 * share,
              Math.max(0, -min),
              change);
      case LOOSE ->
          String.format(
              Locale.ROOT,
              "It stands off by up to %.2f mm more than as made, on the mean about a level. %s. Swelling that went down is the"
                  + " usual reason to remould.",
              over,
              change);
      case FITS -> String.format(Locale.ROOT, "It sits about as it was made. %s.", change);
    };
  }
}
