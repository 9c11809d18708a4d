package org.midlateral.mechanics.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.midlateral.LongRun;
import org.midlateral.RandomFile;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.NotComputable;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.measurement.file.Template;

/**
 * On random fingers with random troughs: a closure laid harder never lets the joint go farther; a
 * longer trough never presses harder at its distal end under the same moment; a thicker wall never
 * gives away more. Twenty fingers, and five hundred in a long run.
 */
@Tag(LongRun.TAG)
class MonotoneTest {
  private static final int FINGERS = LongRun.count(20, 500);

  /** Patches lie otherwise on a shorter trough: the resultants tell to about this share. */
  private static final double TELLS = 0.02;

  private static Optional<HeldFinger> trough(double[] draws, String... overrides) {
    List<String> fixed = new ArrayList<>(List.of("trough.distal=open", "dorsal-shell.make=no"));
    fixed.addAll(List.of(overrides));
    Set<String> keys = fixed.stream().map(MonotoneTest::key).collect(Collectors.toSet());
    List<String> entries = new ArrayList<>(RandomFile.entries(draws, 1.2));
    entries.removeIf(entry -> keys.contains(key(entry)));
    entries.addAll(fixed);
    Order order = Orders.parse(Template.text(LengthUnit.MM), "random.yaml", entries).order();
    if (order == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(HeldFinger.of(WornFingers.trough(order), order.design().holding()));
    } catch (DesignRefused | NotComputable e) {
      return Optional.empty();
    }
  }

  private static String key(String entry) {
    return entry.substring(0, entry.indexOf('='));
  }

  private static String wall(double value) {
    return String.format(Locale.ROOT, "trough.wall=%.3f mm", value);
  }

  @Test
  void harderLongerThickerNeverHoldsWorse() throws NotComputable {
    SplittableRandom random = new SplittableRandom(2026);
    int made = 0;
    int compared = 0;
    for (int k = 0; k < FINGERS; k++) {
      double[] draws = random.doubles(RandomFile.DRAWS).toArray();
      Optional<HeldFinger> plain =
          trough(draws, "trough.proximal-margin=4 mm", "trough.distal-margin=5 mm");
      if (plain.isEmpty()) {
        continue;
      }
      made++;
      HeldFinger finger = plain.get();
      String about = "finger " + k;
      double size = finger.fitting().worn().skin().circumference(axis(finger)) / 60;
      JointMoment moment = new JointMoment(20 * size * size * size, 0);
      assertTensionHolds(finger, moment, about);
      Fastening strap = WornFingers.strap(finger.fitting().worn(), 15, 0.5, 180);
      JointAnswer held = finger.hold(strap, moment);
      Optional<HeldFinger> shorter =
          trough(draws, "trough.proximal-margin=8 mm", "trough.distal-margin=9 mm");
      if (shorter.isPresent()) {
        compared++;
        JointAnswer near = shorter.get().hold(strap, moment);
        assertThat(held.resultants().distal().force())
            .as(about)
            .isLessThan((1 + TELLS) * near.resultants().distal().force());
        assertThat(held.angle()).as(about).isLessThan(near.angle() + 0.01);
      }
      double wall = finger.fitting().worn().pieces().get(0).wall();
      Optional<HeldFinger> thicker =
          trough(
              draws,
              "trough.proximal-margin=4 mm",
              "trough.distal-margin=5 mm",
              wall(Math.min(wall, 3.2) + 0.8));
      if (thicker.isPresent()) {
        assertThat(thicker.get().hold(strap, moment).split().plastic())
            .as(about)
            .isLessThan(held.split().plastic() + 0.01);
      }
    }
    System.out.printf(
        "%d random fingers, %d of them compared with shorter troughs%n", made, compared);
    assertThat(made).isGreaterThan(FINGERS / 2);
    assertThat(compared).isGreaterThan(FINGERS / 3);
  }

  private static double axis(HeldFinger finger) {
    return finger.fitting().worn().skin().pipAxis();
  }

  private static void assertTensionHolds(HeldFinger finger, JointMoment moment, String about)
      throws NotComputable {
    Fastening wrap = new Fastening(25, 2, 0.3, 2, List.of());
    Fastening strap = WornFingers.strap(finger.fitting().worn(), 15, 0.3, 180);
    for (Fastening closure : List.of(wrap, strap)) {
      double before = JointAnswer.FARTHEST + 1;
      for (double tension : new double[] {0.3, 0.6, 1.2}) {
        double angle = finger.angle(closure.withTension(tension), moment);
        assertThat(angle).as("%s, %s N", about, tension).isLessThan(before + 1e-6);
        before = angle;
      }
    }
  }
}
