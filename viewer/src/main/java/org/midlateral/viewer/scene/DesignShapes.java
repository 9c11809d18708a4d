package org.midlateral.viewer.scene;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.NailPlate;
import org.midlateral.measurement.Measurements;
import org.midlateral.mechanics.Sections;
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
 * @param pieces the trough, and the dorsal shell where there is one
 * @param sections of the same pieces, in their order
 */
public record DesignShapes(
    Orthosis orthosis,
    SurfaceShape skin,
    SurfaceShape nail,
    List<Landmark> landmarks,
    List<PieceShape> pieces,
    Sections sections) {
  private static final int SKIN_AROUND = 72;
  private static final double SKIN_STEP = 1;

  /** How far the drawn finger goes on proximal of the palmar crease (mm). */
  private static final double STUMP = 4;

  public DesignShapes {
    landmarks = List.copyOf(landmarks);
    pieces = List.copyOf(pieces);
  }

  static DesignShapes of(Orthosis orthosis) {
    Measurements measured = orthosis.order().measurements();
    CompletableFuture<Sections> sections =
        CompletableFuture.supplyAsync(() -> Sections.of(orthosis.digit(), orthosis.solids()));
    return new DesignShapes(
        orthosis,
        SurfaceShape.of(skin(orthosis.digit(), -measured.palmarCreaseToWeb())),
        SurfaceShape.of(Nail.of(NailPlate.of(measured, orthosis.digit()))),
        Landmark.of(measured, orthosis.digit()),
        orthosis.solids().stream().map(PieceShape::of).toList(),
        sections.join());
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
