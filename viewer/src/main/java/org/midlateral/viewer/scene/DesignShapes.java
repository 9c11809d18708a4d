package org.midlateral.viewer.scene;

import static java.util.stream.Collectors.collectingAndThen;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.NailPlate;
import org.midlateral.measurement.Measurements;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.recipe.Orthosis;
import org.midlateral.solid.SkinMesh;
import org.midlateral.viewer.render.SurfaceShape;

/**
 * A design that was made, and the shapes there are to show of it.
 *
 * @param orthosis the design, with all its stages
 * @param skin the finger
 * @param nail that tells the tip
 * @param landmarks lines on the finger
 * @param lines the same, those of a kind as one
 * @param pieces the trough, and the dorsal shell where there is one
 * @param sections of the same pieces, in their order
 */
public record DesignShapes(
    Orthosis orthosis,
    SurfaceShape skin,
    SurfaceShape nail,
    List<Landmark> landmarks,
    Map<Landmark.Kind, SurfaceShape> lines,
    List<PieceShape> pieces,
    DesignSections sections) {
  private static final int SKIN_AROUND = 48;
  private static final double SKIN_STEP = 1.5;

  /** How far the drawn finger goes on proximal of the palmar crease (mm). */
  private static final double STUMP = 4;

  public DesignShapes {
    landmarks = List.copyOf(landmarks);
    lines = Map.copyOf(lines);
    pieces = List.copyOf(pieces);
  }

  /**
   * The shapes of a design.
   *
   * @param before another design's, whose finger is shown again where it was measured alike
   */
  static DesignShapes of(Orthosis orthosis, Optional<DesignShapes> before) {
    Measurements measured = orthosis.order().measurements();
    Optional<DesignShapes> alike =
        before.filter(b -> b.orthosis.order().measurements().equals(measured));
    List<Landmark> landmarks =
        alike.map(DesignShapes::landmarks).orElseGet(() -> Landmark.of(measured, orthosis.digit()));
    return new DesignShapes(
        orthosis,
        alike
            .map(DesignShapes::skin)
            .orElseGet(
                () -> SurfaceShape.of(skin(orthosis.digit(), -measured.palmarCreaseToWeb()))),
        alike
            .map(DesignShapes::nail)
            .orElseGet(() -> SurfaceShape.of(Nail.of(NailPlate.of(measured, orthosis.digit())))),
        landmarks,
        alike.map(DesignShapes::lines).orElseGet(() -> lines(landmarks)),
        orthosis.solids().parallelStream().map(PieceShape::of).toList(),
        new DesignSections(orthosis));
  }

  private static Map<Landmark.Kind, SurfaceShape> lines(List<Landmark> marks) {
    return marks.stream()
        .collect(
            groupingBy(
                Landmark::kind,
                mapping(Landmark::shape, collectingAndThen(toList(), SurfaceShape::joined))));
  }

  /** The order's reference, hand and finger: {@code R-12, right ring finger}. */
  public String title() {
    Measurements measured = orthosis.order().measurements();
    return String.format(
        Locale.ROOT,
        "%s, %s %s finger",
        measured.reference(),
        measured.hand().name().toLowerCase(Locale.ROOT),
        measured.digit().name().toLowerCase(Locale.ROOT));
  }

  /** The skin, coarser than it is measured on: as many triangles as the eye needs. */
  private static TriangleMesh skin(DigitSurface digit, double palmarCrease) {
    return SkinMesh.of(digit, palmarCrease - STUMP, List.of(), SKIN_AROUND, SKIN_STEP).mesh();
  }
}
