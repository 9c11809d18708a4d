package org.midlateral.viewer.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.file.Orders;
import org.midlateral.viewer.draft.Draft;
import org.midlateral.viewer.draft.DraftText;
import org.midlateral.viewer.render.Orbit;
import org.midlateral.viewer.render.SceneItem;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.scene.Landmark;

/** Names never cover each other and stand in the picture: 50 invented fingers, every side. */
class LandmarkLabelsTest {
  private static final int FINGERS = 50;
  private static final int[][] SIZES = {{312, 343}, {655, 489}, {892, 778}};

  @Test
  void namesStandApartAndInThePicture() throws Exception {
    Random random = new Random(5);
    Draft draft = DraftText.read(Sample.BULBOUS.text()).without("width.pip");
    int written = 0;
    int possible = 0;
    for (int i = 0; i < FINGERS; i++) {
      List<Landmark> marks = marks(draft, random);
      int[] size = SIZES[i % SIZES.length];
      for (ViewSide side : ViewSide.values()) {
        Orbit from = new Orbit(Vector3D.ZERO, side.yaw(Hand.RIGHT), side.pitch(), 60);
        SceneItem.Look look = SceneItem.Look.of(Palette.LIGHT.ink());
        List<SceneItem> items =
            marks.stream().map(mark -> SceneItem.of("", mark.shape(), look)).toList();
        Orbit orbit = FitToWindow.of(items, from, size[0], size[1]);
        written += check(marks, orbit, size, i + " from " + side);
        possible += side == ViewSide.DISTAL || side == ViewSide.PROXIMAL ? 2 : 9;
      }
    }
    // Where there is no room a name is left out; that must stay rare.
    assertThat(written).isGreaterThan(possible * 8 / 10);
  }

  private static int check(List<Landmark> marks, Orbit orbit, int[] size, String which) {
    BufferedImage image = new BufferedImage(size[0], size[1], BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    LandmarkLabels labels =
        new LandmarkLabels(orbit, size[0], size[1], Palette.LIGHT, new ArrayList<>());
    labels.draw(g, marks);
    g.dispose();
    List<Rectangle2D> names = labels.names();
    for (int a = 0; a < names.size(); a++) {
      assertThat(new Rectangle2D.Double(0, 0, size[0], size[1]).contains(names.get(a))).isTrue();
      for (int b = a + 1; b < names.size(); b++) {
        assertThat(names.get(a).intersects(names.get(b))).as(which).isFalse();
      }
    }
    assertThat(names.size())
        .isLessThanOrEqualTo(
            (int) marks.stream().map(Landmark::name).filter(n -> !n.isEmpty()).count());
    return names.size();
  }

  /** Measurements a tenth more or less, each for itself within what joints and levels allow. */
  private static List<Landmark> marks(Draft draft, Random random) {
    Draft other = draft;
    double all = 0.85 + 0.3 * random.nextDouble();
    for (String path : draft.values().keySet()) {
      if (path.startsWith("circumference.") || path.startsWith("length.")) {
        double own =
            Double.parseDouble(draft.get(path)) * all * (0.97 + 0.06 * random.nextDouble());
        other = other.with(path, String.format(Locale.ROOT, "%.1f", own));
      }
    }
    Orders.Result read = Orders.parse(DraftText.write(other), "", List.of());
    assertThat(read.errors()).isEmpty();
    Measurements measured = read.order().measurements();
    return Landmark.of(measured, TapedDigit.of(measured));
  }
}
