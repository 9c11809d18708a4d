package org.midlateral.document.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.document.WholeFile;
import org.midlateral.mesh.Meshes;
import org.midlateral.mesh.TriangleMesh;

class PictureTest {
  private static final Color RED = new Color(200, 40, 40);
  private static final Color BLUE = new Color(40, 60, 200);
  private static final TriangleMesh SQUARE = Meshes.box(10, 10, 1);
  private static final Viewpoint ABOVE = Viewpoint.from(Vector3D.Unit.PLUS_Z, Vector3D.Unit.PLUS_Y);

  @TempDir Path folder;

  @Test
  void viewIsRightHandedAndUpStaysUp() {
    Viewpoint view = Viewpoint.from(Vector3D.of(1, -2, 1), Vector3D.Unit.PLUS_Z);
    assertThat(view.right().cross(view.up()).distance(view.toward())).isCloseTo(0, within(1e-12));
    assertThat(view.up().getZ()).isPositive();
    assertThat(view.right().getZ()).isCloseTo(0, within(1e-12));
  }

  @Test
  void figureFillsTheFrameButForItsMargin() {
    BufferedImage image = picture(200, 100, new MeshFigure(SQUARE, RED)).image();
    int covered = 0;
    for (int y = 0; y < 100; y++) {
      for (int x = 0; x < 200; x++) {
        covered += reddish(image, x, y) ? 1 : 0;
      }
    }
    // A square of 88 pixels, its margin being 6 % of the height.
    assertThat(covered).isBetween(86 * 86, 89 * 89);
    assertThat(reddish(image, 100, 50)).isTrue();
    assertThat(reddish(image, 2, 50)).isFalse();
  }

  @Test
  void nearerFigureHidesTheFarther() {
    MeshFigure far = new MeshFigure(SQUARE, RED);
    MeshFigure near = new MeshFigure(Meshes.moved(Meshes.box(4, 4, 1), 3, 3, 5), BLUE);
    for (List<MeshFigure> order : List.of(List.of(far, near), List.of(near, far))) {
      BufferedImage image = new Picture(order, ABOVE, 100, 100).image();
      assertThat(reddish(image, 50, 50)).isFalse();
      assertThat(reddish(image, 15, 15)).isTrue();
    }
  }

  @Test
  void clearFigureLetsTheOneBehindShowThrough() {
    MeshFigure far = new MeshFigure(SQUARE, RED);
    MeshFigure clear =
        new MeshFigure(Meshes.moved(Meshes.box(4, 4, 1), 3, 3, 5), new Color(40, 60, 200, 90));
    Color mixed = new Color(picture(100, 100, far, clear).image().getRGB(50, 50));
    Color plain = new Color(picture(100, 100, far).image().getRGB(50, 50));
    assertThat(mixed.getRed()).isBetween(60, plain.getRed() - 10);
    assertThat(mixed.getBlue()).isGreaterThan(plain.getBlue() + 10);
    MeshFigure behind = new MeshFigure(Meshes.moved(Meshes.box(4, 4, 1), 3, 3, -5), clear.colour());
    assertThat(new Color(picture(100, 100, far, behind).image().getRGB(50, 50))).isEqualTo(plain);
  }

  /** A ball seen from the front is brightest up left of its middle, where the key light is. */
  @Test
  void lightComesOverTheLeftShoulder() {
    MeshFigure torus = new MeshFigure(Meshes.torus(3, 2.9, 80, 60), Color.GRAY);
    BufferedImage image = picture(200, 200, torus).image();
    assertThat(new Color(image.getRGB(60, 50)).getRed())
        .isGreaterThan(new Color(image.getRGB(140, 150)).getRed() + 20);
  }

  @Test
  void writtenAsPngAndTheSameEachTime() throws IOException {
    Picture picture = picture(64, 48, new MeshFigure(Meshes.torus(10, 3, 30, 18), RED));
    Path file = folder.resolve("torus.png");
    WholeFile.write(file, picture, false);
    BufferedImage read = ImageIO.read(file.toFile());
    BufferedImage again = picture.image();
    assertThat(read.getRGB(0, 0, 64, 48, null, 0, 64))
        .isEqualTo(again.getRGB(0, 0, 64, 48, null, 0, 64));
  }

  @Test
  void nothingToSeeIsRefused() {
    assertThatThrownBy(() -> new Picture(List.of(), ABOVE, 10, 10))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static Picture picture(int width, int height, MeshFigure... figures) {
    return new Picture(List.of(figures), ABOVE, width, height);
  }

  private static boolean reddish(BufferedImage image, int x, int y) {
    Color colour = new Color(image.getRGB(x, y));
    return colour.getRed() > 1.5 * colour.getBlue();
  }
}
