package org.midlateral.recipe.product;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.midlateral.cut.Lettering;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.recipe.Orthosis;
import org.midlateral.solid.Solid;

/** The proximal mark has a hand and can be felt; the label reads on both hands, G10. */
class MarkAndLabelTest {
  private static final String TEXT = "F7";

  private static Orthosis make(String hand, String label) throws Exception {
    return Orthosis.make(
        Orders.read(
                Path.of("..", "samples", "bulbous-ring.yaml"),
                List.of(
                    "hand=" + hand,
                    "print.label=" + label,
                    "reference=" + TEXT,
                    "dorsal-shell.length=38",
                    "print.edge-length=1.2"))
            .order());
  }

  private static Geometry raised(Solid solid) {
    return solid.piece().raised().orElseThrow().shape();
  }

  private static Geometry reflected(Geometry shape) {
    return AffineTransformation.reflectionInstance(0, 0, 0, 1).transform(shape);
  }

  @Test
  void withoutLettersTheOtherHandsPiecesAreMirrorImages() throws Exception {
    List<Solid> right = make("right", "no").solids();
    List<Solid> left = make("left", "no").solids();
    assertThat(right).hasSize(2);
    for (int i = 0; i < 2; i++) {
      TriangleMesh mirrored = right.get(i).mesh().mirrored();
      assertThat(left.get(i).mesh().coordinates()).isEqualTo(mirrored.coordinates());
      assertThat(left.get(i).mesh().triangles()).isEqualTo(mirrored.triangles());
      assertThat(left.get(i).mesh().coordinates()).isNotEqualTo(right.get(i).mesh().coordinates());
    }
  }

  @Test
  void theMarkIsMirroredAndTheLettersAreNot() throws Exception {
    Orthosis right = make("right", "yes");
    Orthosis left = make("left", "yes");
    Geometry mark = raised(make("right", "no").dorsalShell().orElseThrow());

    assertThat(apart(raised(left.trough()), raised(right.trough()))).isLessThan(1e-6);
    Geometry rightLetters = raised(right.dorsalShell().orElseThrow()).difference(mark);
    Geometry leftLetters = raised(left.dorsalShell().orElseThrow()).difference(reflected(mark));
    assertThat(apart(rightLetters, leftLetters)).isLessThan(1e-6);
    assertThat(apart(rightLetters, reflected(leftLetters)))
        .isGreaterThan(0.2 * rightLetters.getArea());
  }

  private static double apart(Geometry a, Geometry b) {
    return a.symDifference(b).getArea();
  }

  /**
   * From the mesh alone: looked at from outside with the finger pointing right, the raised points
   * lie within the font's letters, and clearly fewer of them within either mirror image. A flat
   * view of a round, tapering finger is a little short, so that some points lie beside.
   */
  @ParameterizedTest
  @ValueSource(strings = {"right", "left"})
  void theLettersReadFromOutside(String hand) throws Exception {
    for (Solid solid : make(hand, "yes").solids()) {
      Envelope label = letters(solid).getEnvelopeInternal();
      Geometry print = print(label.getHeight());
      List<Coordinate> seen = seen(solid, label);
      assertThat(seen).hasSizeGreaterThan(40);
      double read = share(seen, print);
      assertThat(read).isGreaterThan(0.75);
      assertThat(share(seen, AffineTransformation.scaleInstance(1, -1).transform(print)))
          .isLessThan(read - 0.08);
      assertThat(share(seen, AffineTransformation.scaleInstance(-1, 1).transform(print)))
          .isLessThan(read - 0.08);
    }
  }

  /**
   * The arrow's point is the most proximal of what follows the mark; the word reads on both hands.
   */
  @ParameterizedTest
  @ValueSource(strings = {"right", "left"})
  void theWordReadsFromTheArrow(String hand) throws Exception {
    Solid shell = worded(hand, "46").dorsalShell().orElseThrow();
    Geometry sign = letters(shell);
    // Eight letters, of which three have a hole, and the arrow.
    assertThat(sign.getNumGeometries()).isEqualTo(9);
    Geometry arrow = sign.getGeometryN(0);
    for (int i = 1; i < sign.getNumGeometries(); i++) {
      Geometry next = sign.getGeometryN(i);
      boolean before = next.getEnvelopeInternal().getMinY() < arrow.getEnvelopeInternal().getMinY();
      arrow = before ? next : arrow;
    }
    Geometry word = sign.difference(arrow);
    assertThat(arrow.getEnvelopeInternal().getMaxY())
        .isLessThan(word.getEnvelopeInternal().getMinY());
    assertThat(arrow.getCoordinates()).hasSize(4);
    for (Coordinate corner : arrow.getCoordinates()) {
      boolean point = corner.y - arrow.getEnvelopeInternal().getMinY() < 1e-6;
      assertThat(Math.abs(corner.x) < 1e-6).isEqualTo(point);
    }

    Geometry print = Lettering.outlines(List.of("PROXIMAL"), 3.2);
    assertThat(word.getEnvelopeInternal().getHeight())
        .isCloseTo(print.getEnvelopeInternal().getWidth(), within(1e-6));
    List<Coordinate> seen = seen(shell, word.getEnvelopeInternal());
    double read = share(seen, print);
    assertThat(read).isGreaterThan(0.75);
    assertThat(share(seen, AffineTransformation.scaleInstance(-1, 1).transform(print)))
        .isLessThan(read - 0.08);
  }

  /** Where it has no room, the shell is as it is without the word, and a note says so. */
  @Test
  void withoutRoomThereIsNoWord() throws Exception {
    Orthosis small = worded("right", "26");
    assertThat(small.findings()).extracting(Finding::code).contains("proximal-word");
    assertThat(raised(small.dorsalShell().orElseThrow()).getNumGeometries()).isEqualTo(1);
    assertThat(worded("right", "46").findings())
        .extracting(Finding::code)
        .doesNotContain("proximal-word");
  }

  private static Orthosis worded(String hand, String length) throws Exception {
    return Orthosis.make(
        Orders.read(
                Path.of("..", "samples", "bulbous-ring.yaml"),
                List.of(
                    "hand=" + hand,
                    "print.proximal=word",
                    "dorsal-shell.length=" + length,
                    "print.edge-length=1.2"))
            .order());
  }

  /** The text as the font draws it, in the one of the two sizes that is as long as the label. */
  private static Geometry print(double length) {
    Geometry large = Lettering.outlines(List.of(TEXT), 4);
    Geometry small = Lettering.outlines(List.of(TEXT), 3.2);
    boolean isLarge = Math.abs(large.getEnvelopeInternal().getWidth() - length) < 1e-6;
    Geometry print = isLarge ? large : small;
    assertThat(print.getEnvelopeInternal().getWidth()).isCloseTo(length, within(1e-6));
    return print;
  }

  /** What is raised without the mark: on the shell, the polygons distal of it. */
  private static Geometry letters(Solid solid) {
    Geometry all = raised(solid);
    List<Geometry> parts = new ArrayList<>();
    double mark = solid.piece().dorsal() ? all.getEnvelopeInternal().getMinY() + 5.5 : -1e3;
    for (int i = 0; i < all.getNumGeometries(); i++) {
      if (all.getGeometryN(i).getEnvelopeInternal().getMinY() > mark) {
        parts.add(all.getGeometryN(i));
      }
    }
    return all.getFactory().buildGeometry(parts);
  }

  /** Raised points in the plane that touches the outside at the label's middle. */
  private static List<Coordinate> seen(Solid solid, Envelope label) {
    int n = solid.innerVertices();
    List<Vector3D> tops = new ArrayList<>();
    Vector3D normal = Vector3D.ZERO;
    for (int i = 0; i < n; i++) {
      Vector3D low = solid.mesh().vertex(i);
      Vector3D high = solid.mesh().vertex(n + i);
      boolean raised = low.distance(high) > solid.piece().wall() + 0.5;
      if (raised
          && label.getMinY() - 0.2 < solid.station(i)
          && solid.station(i) < label.getMaxY() + 0.2) {
        tops.add(high);
        normal = normal.add(low.vectorTo(high));
      }
    }
    Vector3D out = normal.normalize();
    Vector3D right = Vector3D.of(1, 0, 0).subtract(out.multiply(out.getX())).normalize();
    Vector3D up = out.cross(right);
    Envelope box = new Envelope();
    List<Coordinate> flat = new ArrayList<>();
    for (Vector3D top : tops) {
      Coordinate c = new Coordinate(top.dot(right), top.dot(up));
      box.expandToInclude(c);
      flat.add(c);
    }
    Coordinate middle = box.centre();
    flat.replaceAll(c -> new Coordinate(c.x - middle.x, c.y - middle.y));
    return flat;
  }

  private static double share(List<Coordinate> points, Geometry print) {
    Envelope box = print.getEnvelopeInternal();
    Geometry centred =
        AffineTransformation.translationInstance(-box.centre().x, -box.centre().y)
            .transform(print)
            .buffer(0.35);
    long inside =
        points.stream().filter(c -> centred.contains(centred.getFactory().createPoint(c))).count();
    return (double) inside / points.size();
  }

  /** At least 0.6 mm high, with strokes at least 1.2 mm wide. */
  @Test
  void theMarkCanBeFelt() throws Exception {
    Solid shell = make("right", "no").dorsalShell().orElseThrow();
    int n = shell.innerVertices();
    double highest = 0;
    int top = 0;
    for (int i = 0; i < n; i++) {
      double high =
          shell.mesh().vertex(i).distance(shell.mesh().vertex(n + i)) - shell.piece().wall();
      highest = Math.max(highest, high);
      top += high > 0.6 - 1e-6 ? 1 : 0;
    }
    assertThat(highest).isCloseTo(0.6, within(1e-6));
    assertThat(top).isGreaterThan(20);
    // Half the slope's width comes off each side of the flat top, 0.12 mm.
    Geometry flat = raised(shell).buffer(-0.12);
    Geometry thinned = flat.buffer(-0.59);
    assertThat(thinned.isEmpty()).isFalse();
    // Opened by discs of 1.18 mm it stays what it is: no stroke is thinner.
    assertThat(apart(thinned.buffer(0.59, 32), flat)).isLessThan(0.02 * flat.getArea());
  }

  /** No turn of the plane takes the mark to its mirror image, nor to itself. */
  @Test
  void theMarkHasAHandAndADirection() throws Exception {
    Geometry mark = raised(make("right", "no").dorsalShell().orElseThrow());
    Coordinate middle = mark.getCentroid().getCoordinate();
    Geometry centred =
        AffineTransformation.translationInstance(-middle.x, -middle.y).transform(mark);
    for (int turn = 0; turn < 360; turn += 5) {
      AffineTransformation rotation = AffineTransformation.rotationInstance(Math.toRadians(turn));
      assertThat(apart(rotation.transform(reflected(centred)), centred))
          .as("mirrored and turned by %d degrees", turn)
          .isGreaterThan(0.15 * mark.getArea());
      if (turn >= 30 && turn <= 330) {
        assertThat(apart(rotation.transform(centred), centred))
            .as("turned by %d degrees", turn)
            .isGreaterThan(0.15 * mark.getArea());
      }
    }
  }
}
