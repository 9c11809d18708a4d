package org.midlateral.recipe.joint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.HoldingDesign;
import org.midlateral.measurement.HoldingDesign.SkinDesign;
import org.midlateral.measurement.HoldingDesign.TissueDesign;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.joint.HeldFinger;
import org.midlateral.mechanics.joint.JointAnswer;
import org.midlateral.mechanics.joint.JointMoment;
import org.midlateral.work.Interruption;

/**
 * How far the angle and the pressure may be off: errors of the tape at each girth, of the
 * goniometer, of the joint's moment and of the skin's constants, each drawn anew for every draw.
 *
 * <p>Each error is tried alone to both sides; the pressure's logarithm, and what is nearly that of
 * the angle, which may be negative, are taken as a parabola over each and as their sum over all, so
 * that thousands of draws cost two solutions an error. Errors of the lengths are left out: they
 * shift levers by a thirtieth.
 *
 * @param draws how many
 * @param seed they come from
 * @param angle degrees beyond the angle asked for
 * @param pressure over 1 cm² (MPa)
 */
public record AngleBands(int draws, long seed, Range angle, Range pressure) {
  static final int DRAWS = 2000;
  static final long SEED = 1;

  /** Standard deviation of a tape reading (mm); an assumption, from memory. */
  static final double TAPE = 1;

  /**
   * Standard error of a goniometer (rad): 2.4 to 4.9 degrees, Macionis, BMC Musculoskelet. Disord.
   * 14:17 (2013).
   */
  static final double GONIOMETER = Math.toRadians(3.5);

  /** Spread of the logarithm of a joint's moment that is guessed: 10 to 45 N·mm about 20. */
  static final double GUESSED_MOMENT = 0.46;

  /** Of one that was stated or read on a gauge; from memory. */
  static final double READ_MOMENT = 0.1;

  /** Of the skin's modulus but at the dorsum: half to twice. */
  static final double SKIN = Math.log(2) / 1.645;

  /** Of the dorsal skin's: 30 to 150 kPa. */
  static final double DORSUM = Math.log(5) / 2 / 1.645;

  /** Errors are tried so many standard deviations off. */
  private static final double TRIED = 1.2;

  /** A smaller angle (degrees) counts as it is, a larger one by its logarithm. */
  private static final double SMALL_ANGLE = 0.5;

  /**
   * The middle nine tenths.
   *
   * @param low 5 % lie under it
   * @param high 5 % lie over it
   */
  public record Range(double low, double high) {}

  /**
   * Everything that may be off, in standard deviations.
   *
   * @param girths by level, in the order measured
   */
  record Errors(double[] girths, double goniometer, double moment, double skin, double dorsum) {
    static Errors of(double[] all) {
      int n = all.length - 4;
      return new Errors(Arrays.copyOf(all, n), all[n], all[n + 1], all[n + 2], all[n + 3]);
    }
  }

  /**
   * The bands of an orthosis.
   *
   * @param near its finger, looking from where it is held
   * @param nominal the joint without any error
   * @throws NotComputable where there is no answer with one
   */
  static AngleBands of(WornOrthosis worn, HeldFinger near, JointAnswer nominal)
      throws NotComputable {
    int n = worn.made().order().measurements().circumference().size() + 4;
    double[] middle = logs(nominal);
    Interruption asked = Interruption.current();
    double[][][] parabolas =
        IntStream.range(0, n)
            .parallel()
            .mapToObj(
                k -> {
                  asked.check();
                  return parabolas(worn, near, middle, n, k);
                })
            .toArray(double[][][]::new);
    if (Arrays.stream(parabolas).anyMatch(Objects::isNull)) {
      throw new NotComputable("the joint has no equilibrium with a reading that is off");
    }
    return drawn(middle, parabolas);
  }

  /** What one error does to each figure; null where the joint has no answer with it. */
  private static double[][] parabolas(
      WornOrthosis worn, HeldFinger near, double[] middle, int n, int error) {
    try {
      double[] up = logs(answer(worn, near, one(n, error, TRIED)));
      double[] down = logs(answer(worn, near, one(n, error, -TRIED)));
      double[][] parabolas = new double[2][];
      for (int f = 0; f < 2; f++) {
        parabolas[f] =
            new double[] {
              (up[f] - down[f]) / (2 * TRIED),
              (up[f] + down[f] - 2 * middle[f]) / (2 * TRIED * TRIED)
            };
      }
      return parabolas;
    } catch (NotComputable without) {
      return null;
    }
  }

  private static AngleBands drawn(double[] middle, double[][][] parabolas) {
    SplittableRandom random = new SplittableRandom(SEED);
    double[][] found = new double[2][DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      double[] sum = middle.clone();
      for (double[][] parabola : parabolas) {
        double z = random.nextGaussian();
        for (int f = 0; f < 2; f++) {
          sum[f] += z * (parabola[f][0] + z * parabola[f][1]);
        }
      }
      found[0][i] = Math.min(JointAnswer.FARTHEST, SMALL_ANGLE * Math.sinh(sum[0]));
      found[1][i] = Math.exp(sum[1]);
    }
    return new AngleBands(DRAWS, SEED, range(found[0]), range(found[1]));
  }

  private static double[] one(int n, int which, double value) {
    double[] all = new double[n];
    all[which] = value;
    return all;
  }

  private static double[] logs(JointAnswer answer) {
    return new double[] {measure(answer.angle()), Math.log(answer.squareCentimetre().pressure())};
  }

  /** The inverse of the hyperbolic sine: a logarithm that passes through 0. */
  static double measure(double angle) {
    double share = Math.abs(angle) / SMALL_ANGLE;
    return Math.copySign(Math.log(share + Math.hypot(share, 1)), angle);
  }

  private static JointAnswer answer(WornOrthosis worn, HeldFinger near, double[] z)
      throws NotComputable {
    Errors errors = Errors.of(z);
    HeldFinger finger =
        near.withHolding(skin(worn.made().order().design().holding(), errors))
            .onThicker(thicker(worn, errors));
    return finger.holdWhole(worn.fastening(), moment(worn, errors));
  }

  /** A finger whose girths are not what the tape read. */
  private static DoubleUnaryOperator thicker(WornOrthosis worn, Errors errors) {
    if (Arrays.stream(errors.girths).allMatch(z -> z == 0)) {
      return s -> 0;
    }
    Measurements read = worn.made().order().measurements();
    DigitSurface made = worn.made().digit();
    DigitSurface real = TapedDigit.of(read.withCircumference(girths(read, errors.girths)));
    return s -> (real.circumference(s) - made.circumference(s)) / (2 * Math.PI);
  }

  static Map<Level, Double> girths(Measurements read, double[] z) {
    Map<Level, Double> girths = new EnumMap<>(Level.class);
    List<Level> levels = new ArrayList<>(read.circumference().keySet());
    for (int k = 0; k < levels.size(); k++) {
      girths.put(levels.get(k), read.circumference().get(levels.get(k)) + TAPE * z[k]);
    }
    return girths;
  }

  /** A joint whose limit is more flexed than was read pulls harder where the piece holds it. */
  static JointMoment moment(WornOrthosis worn, Errors errors) {
    JointMoment nominal = worn.moment();
    var joint = worn.made().order().design().holding().joint();
    boolean guessed =
        joint.moment().isEmpty()
            && joint.gauge().force().isEmpty()
            && worn.made().order().design().support().moment().isEmpty();
    double steep = nominal.atLimit() == 0 ? 0 : nominal.slope() / nominal.atLimit();
    double log =
        errors.moment * (guessed ? GUESSED_MOMENT : READ_MOMENT)
            + errors.goniometer * GONIOMETER * steep;
    return nominal.times(Math.exp(log));
  }

  static HoldingDesign skin(HoldingDesign holding, Errors errors) {
    SkinDesign skin = holding.skin();
    double soft = Math.exp(SKIN * errors.skin);
    return holding.withSkin(
        new SkinDesign(
            stiffer(skin.volar(), soft),
            stiffer(skin.pulp(), soft),
            stiffer(skin.side(), soft),
            stiffer(skin.dorsum(), Math.exp(DORSUM * errors.dorsum)),
            skin.overJoint(),
            skin.friction()));
  }

  private static TissueDesign stiffer(TissueDesign tissue, double factor) {
    return new TissueDesign(factor * tissue.modulus(), tissue.stiffening(), tissue.thickness());
  }

  static Range range(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return new Range(
        sorted[(int) (0.05 * sorted.length)], sorted[(int) Math.ceil(0.95 * sorted.length) - 1]);
  }
}
