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
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.file.Orders;
import org.midlateral.solid.SkinMesh;
import org.midlateral.viewer.draft.Draft;
import org.midlateral.viewer.draft.DraftText;
import org.midlateral.viewer.drawing.Palette;
import org.midlateral.viewer.render.Orbit;
import org.midlateral.viewer.render.SceneItem;
import org.midlateral.viewer.render.SurfaceShape;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.scene.Landmark;

/**
 * Names never cover each other, nor a tie, nor the line that they name, nor, but for want of room,
 * the finger; and they stand in the picture: 50 invented fingers, every side.
 */
class LandmarkLabelsTest {
  private static final int FINGERS = 50;
  private static final int[][] SIZES = {{312, 343}, {655, 489}, {892, 778}};

  private int written;
  private int onFinger;

  /** A finger as it is drawn. */
  private record DrawnFinger(List<Landmark> marks, SurfaceShape skin) {
    List<SceneItem> items() {
      SceneItem.Look look = SceneItem.Look.of(Palette.LIGHT.ink());
      List<SceneItem> items = new ArrayList<>();
      marks.forEach(mark -> items.add(SceneItem.of("", mark.shape(), look)));
      items.add(SceneItem.of("", skin, look));
      return items;
    }
  }

  @Test
  void namesStandApartAndInThePicture() throws Exception {
    Random random = new Random(5);
    Draft draft = DraftText.read(Sample.BULBOUS.text()).without("width.pip");
    int possible = 0;
    for (int i = 0; i < FINGERS; i++) {
      DrawnFinger finger = finger(draft, random);
      int[] size = SIZES[i % SIZES.length];
      for (ViewSide side : ViewSide.values()) {
        Orbit from = new Orbit(Vector3D.ZERO, side.yaw(Hand.RIGHT), side.pitch(), 60);
        Orbit orbit = FitToWindow.of(finger.items(), from, size[0], size[1]);
        check(finger, orbit, size, i + " from " + side);
        possible += side == ViewSide.DISTAL || side == ViewSide.PROXIMAL ? 2 : 9;
      }
    }
    // Where there is no room a name is left out, or lies on the finger; that must stay rare.
    assertThat(written).isGreaterThan(possible * 8 / 10);
    assertThat(onFinger).isLessThan(written / 20);
  }

  private void check(DrawnFinger finger, Orbit orbit, int[] size, String which) {
    BufferedImage image = new BufferedImage(size[0], size[1], BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    SceneItem skin = SceneItem.of("", finger.skin(), SceneItem.Look.of(Palette.LIGHT.ink()));
    List<Rectangle2D> covered = CoveredStrips.of(List.of(skin), orbit, size[0], size[1]);
    LandmarkLabels labels =
        new LandmarkLabels(orbit, size[0], size[1], Palette.LIGHT, List.of(), List.of(), covered);
    labels.draw(g, finger.marks());
    g.dispose();
    List<LandmarkLabels.WrittenName> names = labels.names();
    for (int a = 0; a < names.size(); a++) {
      Rectangle2D box = names.get(a).box();
      assertThat(new Rectangle2D.Double(0, 0, size[0], size[1]).contains(box)).isTrue();
      for (int b = a + 1; b < names.size(); b++) {
        assertThat(box.intersects(names.get(b).box())).as(which).isFalse();
        assertThat(names.get(a).line().intersects(names.get(b).box())).as(which).isFalse();
        assertThat(names.get(b).line().intersects(box)).as(which).isFalse();
      }
      assertThat(covers(box, names.get(a).mark().shape(), orbit, size)).as(which).isFalse();
      onFinger += covers(box, finger.skin(), orbit, size) ? 1 : 0;
    }
    written += names.size();
  }

  /** Whether any point of a shape is seen within a box. */
  private static boolean covers(Rectangle2D box, SurfaceShape shape, Orbit orbit, int[] size) {
    for (int v = 0; v < shape.vertexCount(); v++) {
      Vector3D point = Vector3D.of(shape.at(v, 0), shape.at(v, 1), shape.at(v, 2));
      Vector3D seen = orbit.project(point, size[0], size[1]);
      if (box.contains(seen.getX(), seen.getY())) {
        return true;
      }
    }
    return false;
  }

  /** Measurements a tenth more or less, each for itself within what joints and levels allow. */
  private static DrawnFinger finger(Draft draft, Random random) {
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
    DigitSurface digit = TapedDigit.of(measured);
    SkinMesh skin = SkinMesh.of(digit, -measured.palmarCreaseToWeb() - 4, List.of(), 48, 1.5);
    return new DrawnFinger(Landmark.of(measured, digit), SurfaceShape.of(skin.mesh()));
  }
}
