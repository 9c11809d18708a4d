package org.midlateral.viewer.view;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.viewer.scene.Landmark;
import org.midlateral.viewer.scene.Made;
import org.midlateral.viewer.scene.PieceShape;
import org.midlateral.viewer.section.Colouring;
import org.midlateral.viewer.stage.Actor;
import org.midlateral.viewer.stage.Actor.Look;

/** Who is on the stage for a design and what the user chose to see of it. */
final class SceneContents {
  private static final double GLASS_SKIN = 0.4;
  private static final double GLASS_PIECE = 0.4;

  private SceneContents() {}

  /** All actors, see-through ones in the order they are to be drawn. */
  static List<Actor> of(
      Made.MadeView view, Colouring colouring, DisplayChoice choice, Palette palette) {
    List<Actor> actors = new ArrayList<>();
    add(actors, choice.of(ViewPart.FINGER), GLASS_SKIN, skin(view, choice));
    if (choice.of(ViewPart.MARKS) != PartVisibility.HIDDEN) {
      for (Landmark mark : view.landmarks()) {
        Look look = new Look(colour(mark.kind(), palette), null, 1, false);
        actors.add(Actor.of(mark.name(), mark.shape(), look));
      }
    }
    for (int i = 0; i < view.pieces().size(); i++) {
      PieceShape piece = view.pieces().get(i);
      ViewPart part = piece.isDorsal() ? ViewPart.SHELL : ViewPart.TROUGH;
      Look look = Look.of(piece.isDorsal() ? palette.shell() : palette.trough());
      if (!colouring.paints().isEmpty()) {
        look = look.withPaint(colouring.paints().get(i).orElse(null));
      }
      Actor actor =
          Actor.of(part.toString(), piece.shape(), look).at(pulled(view, piece, choice.pull()));
      boolean bare = !colouring.paints().isEmpty() && colouring.paints().get(i).isEmpty();
      add(actors, bare ? atMostGlass(choice.of(part)) : choice.of(part), GLASS_PIECE, actor);
    }
    return actors;
  }

  /** A piece without values must not hide those of another. */
  private static PartVisibility atMostGlass(PartVisibility chosen) {
    return chosen == PartVisibility.SHOWN ? PartVisibility.SEE_THROUGH : chosen;
  }

  private static Actor skin(Made.MadeView view, DisplayChoice choice) {
    return Actor.of(ViewPart.FINGER.toString(), view.skin(), Look.of(choice.tone().colour()));
  }

  private static void add(
      List<Actor> actors, PartVisibility visibility, double glass, Actor actor) {
    switch (visibility) {
      case SHOWN -> actors.add(actor);
      case SEE_THROUGH ->
          actors.add(
              new Actor(
                  actor.name(),
                  actor.shape(),
                  actor.look().withOpacity(glass),
                  actor.place(),
                  actor.motion(),
                  actor.amount()));
      case HIDDEN -> {}
    }
  }

  /** Where a piece goes when it is drawn off the way it was fitted: square to the PIP joint. */
  static Vector3D pulled(Made.MadeView view, PieceShape piece, double pull) {
    DigitSurface digit = view.orthosis().digit();
    Vector3D along = digit.tangent(digit.pipAxis());
    Vector3D dorsal = Vector3D.of(-along.getZ(), 0, along.getX());
    return dorsal.multiply(piece.isDorsal() ? pull : -pull);
  }

  static Color colour(Landmark.Kind kind, Palette palette) {
    return switch (kind) {
      case LEVEL -> palette.level();
      case CREASE -> palette.crease();
      case AXIS -> palette.axis();
      case MIDLATERAL -> palette.midlateral();
    };
  }
}
