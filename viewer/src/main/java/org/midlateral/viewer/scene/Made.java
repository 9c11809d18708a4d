package org.midlateral.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mechanics.Sections;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.recipe.Orthosis;
import org.midlateral.solid.SkinMesh;
import org.midlateral.viewer.draft.Draft;
import org.midlateral.viewer.draft.DraftText;
import org.midlateral.viewer.stage.SurfaceShape;

/**
 * What came of a draft.
 *
 * @param draft what was made
 * @param errors values that cannot stand
 * @param findings cautions and refusals
 * @param view what there is to show; empty where the draft was refused
 */
public record Made(
    Draft draft, List<InputError> errors, List<Finding> findings, Optional<Made.MadeView> view) {

  /**
   * What there is to show of a design.
   *
   * @param orthosis the design, with all its stages
   * @param skin the finger
   * @param landmarks lines on the finger
   * @param pieces the trough, and the dorsal shell where there is one
   * @param sections of the same pieces, in their order
   */
  public record MadeView(
      Orthosis orthosis,
      SurfaceShape skin,
      List<Landmark> landmarks,
      List<PieceShape> pieces,
      Sections sections) {
    private static final int SKIN_AROUND = 72;
    private static final double SKIN_STEP = 1;

    /** How far the drawn finger goes on proximal of the palmar crease (mm). */
    private static final double STUMP = 4;

    public MadeView {
      landmarks = List.copyOf(landmarks);
      pieces = List.copyOf(pieces);
    }

    static MadeView of(Orthosis orthosis) {
      var measured = orthosis.order().measurements();
      CompletableFuture<Sections> sections =
          CompletableFuture.supplyAsync(() -> Sections.of(orthosis.digit(), orthosis.solids()));
      return new MadeView(
          orthosis,
          SurfaceShape.of(skin(orthosis.digit(), -measured.palmarCreaseToWeb())),
          Landmark.of(measured, orthosis.digit()),
          orthosis.solids().stream().map(PieceShape::of).toList(),
          sections.join());
    }

    /** The skin, coarser than it is measured on: as many triangles as the eye needs. */
    private static TriangleMesh skin(DigitSurface digit, double palmarCrease) {
      return SkinMesh.of(digit, palmarCrease - STUMP, List.of(), SKIN_AROUND, SKIN_STEP).mesh();
    }
  }

  public Made {
    errors = List.copyOf(errors);
    findings = List.copyOf(findings);
  }

  /** Makes a draft, as far as it goes. */
  public static Made of(Draft draft) {
    Orders.Result read = Orders.parse(DraftText.write(draft), "", List.of());
    if (!read.ok()) {
      return new Made(draft, read.errors(), List.of(), Optional.empty());
    }
    List<Finding> findings = new ArrayList<>(read.cautions());
    try {
      return new Made(
          draft, List.of(), findings, Optional.of(MadeView.of(Orthosis.make(read.order()))));
    } catch (DesignRefused e) {
      findings.add(0, e.finding());
    } catch (RuntimeException e) {
      String text = "This design met a defect of the program (" + e + "); please report it.";
      findings.add(0, Finding.refusal("defect", null, text, Double.NaN, Double.NaN));
    }
    return new Made(draft, List.of(), findings, Optional.empty());
  }
}
