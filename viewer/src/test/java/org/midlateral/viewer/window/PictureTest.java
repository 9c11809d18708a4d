package org.midlateral.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.function.IntPredicate;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.midlateral.viewer.drawing.Palette;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.section.Colouring;
import org.midlateral.viewer.view.PartVisibility;
import org.midlateral.viewer.view.ViewSide;

/** What is to be seen on the screen, by measured regions of it. */
@ExtendWith(OnDisplay.class)
class PictureTest {
  private static final IntPredicate TROUGH = Pixels.shadeOf(Palette.LIGHT.trough());
  private static final IntPredicate SHELL = Pixels.shadeOf(Palette.LIGHT.shell());

  /** Height of what is written at the upper edge (px). */
  private static final int TITLE = 30;

  private WindowDriver driver;

  @BeforeEach
  void open() throws Exception {
    driver = WindowDriver.withSample(Sample.BULBOUS);
    from(ViewSide.RADIAL);
  }

  @AfterEach
  void putBack() {
    for (String part : new String[] {"finger", "trough", "shell"}) {
      driver.show(part, PartVisibility.SHOWN);
    }
    marks(true);
    driver.colour(Quantity.NONE);
    driver.pull(0);
    driver.inSwing(
        () -> {
          driver.window.setDark(false);
          return null;
        });
    driver.settle();
  }

  private void from(ViewSide side) {
    driver.click(driver.find(JButton.class, "side." + WindowDriver.lower(side)));
    driver.settle();
  }

  private void marks(boolean shown) {
    JCheckBox box = driver.find(JCheckBox.class, "show.marks");
    if (box.isSelected() != shown) {
      driver.click(box);
    }
    driver.settle();
  }

  private BufferedImage picture() {
    return driver.grab(driver.view());
  }

  private double pixelsPerMm() {
    return 1 / driver.view().orbit().pixel(driver.view().getWidth(), driver.view().getHeight());
  }

  @Test
  void piecesAreThereUntilTheyAreHidden() {
    BufferedImage all = picture();
    int area = all.getWidth() * all.getHeight();
    assertThat(Pixels.count(all, TROUGH)).isGreaterThan(area / 40);
    assertThat(Pixels.count(all, SHELL)).isGreaterThan(area / 80);
    driver.show("trough", PartVisibility.HIDDEN);
    BufferedImage without = picture();
    assertThat(Pixels.count(without, TROUGH)).isLessThan(area / 400);
    assertThat(Pixels.count(without, SHELL)).isGreaterThan(area / 80);
    driver.show("trough", PartVisibility.SEE_THROUGH);
    BufferedImage through = picture();
    assertThat(Pixels.count(through, TROUGH)).isLessThan(Pixels.count(all, TROUGH));
    driver.show("shell", PartVisibility.HIDDEN);
    assertThat(Pixels.count(picture(), SHELL)).isLessThan(area / 400);
  }

  @Test
  void theFingerIsAsLongAsTheScaleSays() {
    driver.show("trough", PartVisibility.HIDDEN);
    driver.show("shell", PartVisibility.HIDDEN);
    marks(false);
    BufferedImage image = picture();
    int paper = Palette.LIGHT.paper().getRGB() & 0xFFFFFF;
    // Below the title, left of the compass and above the scale: only the finger.
    BufferedImage middle =
        image.getSubimage(0, TITLE, image.getWidth(), image.getHeight() - TITLE - 140);
    Rectangle finger = Pixels.bounds(middle, rgb -> Pixels.apart(rgb, paper) > 12);
    // Sample: 24 + 23 + 24 mm from web to tip, 21 mm to the crease, and 4 mm of stump.
    assertThat(finger.width / pixelsPerMm()).isCloseTo(96, within(0.6));
    // The scale bar: the ink's longest run in the lower left corner.
    BufferedImage corner = image.getSubimage(0, image.getHeight() - 20, 200, 12);
    Rectangle bar =
        Pixels.bounds(corner, rgb -> Pixels.apart(rgb, Palette.LIGHT.ink().getRGB()) < 60);
    double length = bar.width / pixelsPerMm();
    assertThat(length).isCloseTo(Math.rint(length / 5) * 5, within(0.4));
  }

  /** The lamp stands over the viewer's shoulder; a surface turned inside out is lit from below. */
  @Test
  void theFingerIsLitFromAbove() {
    driver.show("trough", PartVisibility.HIDDEN);
    driver.show("shell", PartVisibility.HIDDEN);
    marks(false);
    BufferedImage image = picture();
    int paper = Palette.LIGHT.paper().getRGB() & 0xFFFFFF;
    BufferedImage middle =
        image.getSubimage(0, TITLE, image.getWidth(), image.getHeight() - TITLE - 140);
    Rectangle finger = Pixels.bounds(middle, rgb -> Pixels.apart(rgb, paper) > 12);
    int x = (int) finger.getCenterX();
    int high = middle.getRGB(x, finger.y + finger.height / 4) & 255;
    int low = middle.getRGB(x, finger.y + finger.height * 3 / 4) & 255;
    assertThat(high - low).isGreaterThan(30);
  }

  @Test
  void pulledApartThePiecesMoveByTheDistanceSaid() {
    driver.show("finger", PartVisibility.HIDDEN);
    marks(false);
    Rectangle before = Pixels.bounds(picture(), TROUGH);
    Rectangle shellBefore = Pixels.bounds(picture(), SHELL);
    driver.pull(8);
    Rectangle after = Pixels.bounds(picture(), TROUGH);
    Rectangle shellAfter = Pixels.bounds(picture(), SHELL);
    double scale = pixelsPerMm();
    assertThat((after.getMaxY() - before.getMaxY()) / scale).isCloseTo(8, within(0.4));
    assertThat((shellBefore.getMinY() - shellAfter.getMinY()) / scale).isCloseTo(8, within(0.4));
  }

  /** Ends of the published colour map viridis: #440154 at the left, #fde725 at the right. */
  @Test
  void theLegendRunsThroughTheMapAndThePiecesWearIt() {
    driver.colour(Quantity.CLEARANCE);
    // Dorsally the shell lies nearest to the skin, at the dark end of the scale.
    from(ViewSide.DORSAL);
    BufferedImage image = picture();
    int y = image.getHeight() - 56 + 12 + 7;
    BufferedImage row = image.getSubimage(0, y, image.getWidth(), 1);
    int darkest = Pixels.bounds(row, rgb -> Pixels.apart(rgb, 0x440154) < 6).x;
    int lightest = (int) Pixels.bounds(row, rgb -> Pixels.apart(rgb, 0xfde725) < 6).getMaxX();
    assertThat(lightest - darkest).isGreaterThan(250);
    // Two thirds of the way the published map has #35b779 (viridis 0.667).
    int part = row.getRGB(darkest + (lightest - darkest) * 2 / 3, 0) & 0xFFFFFF;
    assertThat(Pixels.apart(part, 0x35b779)).isLessThan(12);
    BufferedImage pieces = image.getSubimage(0, 0, image.getWidth(), y - 20);
    assertThat(Pixels.count(pieces, SHELL)).isLessThan(500);
    assertThat(Pixels.count(pieces, Pixels.shadeOf(ofDorsum()))).isGreaterThan(2000);
  }

  /** What the legend gives the clearance that the shell was asked to keep dorsally. */
  private Color ofDorsum() {
    DesignShapes design = driver.window.shown().orElseThrow();
    double asked = design.orthosis().order().design().dorsalShell().clearance();
    return new Color(Colouring.of(design, Quantity.CLEARANCE).scale().colour(asked));
  }

  /** Ends and middle of the published map cool to warm: #3b4cc0, #dddddd, #b40426. */
  @Test
  void strainHasASignAndItsLegendZeroInTheMiddle() {
    marks(false);
    driver.colour(Quantity.STRAIN_TROUGH);
    BufferedImage image = picture();
    int y = image.getHeight() - 56 + 12 + 7;
    BufferedImage row = image.getSubimage(0, y, image.getWidth(), 1);
    int squeezed = Pixels.bounds(row, rgb -> Pixels.apart(rgb, 0x3b4cc0) < 8).x;
    int stretched = (int) Pixels.bounds(row, rgb -> Pixels.apart(rgb, 0xb40426) < 8).getMaxX();
    assertThat(stretched - squeezed).isGreaterThan(200);
    int middle = row.getRGB((squeezed + stretched) / 2, 0) & 0xFFFFFF;
    assertThat(Pixels.apart(middle, 0xdddddd)).isLessThan(8);
    // The rims are stretched beside the joint, as the load case has it; the relief beside them
    // is squeezed on its outside.
    BufferedImage pieces = image.getSubimage(0, 0, image.getWidth(), y - 20);
    assertThat(Pixels.count(pieces, TROUGH)).isLessThan(500);
    assertThat(Pixels.count(pieces, Pixels.shadeOf(new Color(0x9abbff)))).isGreaterThan(150);
    Rectangle view = driver.place(driver.view());
    Point axis = onScreen(view, driver.window.shown().orElseThrow().orthosis().digit().pipAxis());
    driver.show("shell", PartVisibility.HIDDEN);
    driver.moveTo(axis.x, axis.y + 1);
    driver.until("a reading", () -> driver.view().reading().isPresent());
    assertThat(driver.view().reading().orElseThrow())
        .startsWith("Trough: strain +0.08")
        .contains(" %, ")
        .endsWith(" mm from the web");
  }

  private Point onScreen(Rectangle view, double station) {
    Vector3D place =
        driver
            .view()
            .orbit()
            .project(
                driver.window.shown().orElseThrow().orthosis().digit().centre(station),
                view.width,
                view.height - 56);
    return new Point(view.x + (int) place.getX(), view.y + (int) place.getY());
  }

  @Test
  void theValueUnderThePointerIsTheGapThere() {
    driver.show("shell", PartVisibility.HIDDEN);
    driver.colour(Quantity.CLEARANCE);
    from(ViewSide.VOLAR);
    Rectangle view = driver.place(driver.view());
    driver.moveTo((int) view.getCenterX(), (int) view.getCenterY());
    driver.until("a reading", () -> driver.view().reading().isPresent());
    // On the volar midline the sample's gap is its clearance of 0.3 and liner of 1.0.
    assertThat(driver.view().reading().orElseThrow())
        .startsWith("Trough: clearance 1.3 mm")
        .endsWith(" mm from the web");
  }

  @Test
  void theDarkAppearanceIsDark() {
    BufferedImage light = picture();
    driver.inSwing(
        () -> {
          driver.window.setDark(true);
          return null;
        });
    driver.settle();
    BufferedImage dark = picture();
    assertThat(Pixels.apart(light.getRGB(5, 5), Palette.LIGHT.paper().getRGB())).isLessThan(3);
    assertThat(Pixels.apart(dark.getRGB(5, 5), Palette.DARK.paper().getRGB())).isLessThan(3);
  }
}
