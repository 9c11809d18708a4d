package org.midlateral.viewer.view;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.viewer.drawing.Palette;
import org.midlateral.viewer.render.SceneItem;
import org.midlateral.viewer.render.SceneItem.Look;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.Landmark;
import org.midlateral.viewer.scene.PieceShape;
import org.midlateral.viewer.section.Colouring;

/** What is in the scene of a design, of all that the user chose to see. */
final class SceneContents {
  /** Opacity of what is shown see-through. */
  private static final double SEE_THROUGH = 0.4;

  private SceneContents() {}

  /** All items, see-through ones in the order they are to be drawn. */
  static List<SceneItem> of(
      DesignShapes design, Colouring colouring, DisplayChoice choice, Palette palette) {
    List<SceneItem> items = new ArrayList<>();
    add(items, choice.of(ViewPart.FINGER), skin(design, choice));
    add(items, choice.of(ViewPart.FINGER), nail(design, choice));
    if (choice.of(ViewPart.MARKS) != PartVisibility.HIDDEN) {
      for (Landmark.Kind kind : Landmark.Kind.values()) {
        Look look = new Look(colour(kind, palette), null, 1, false);
        items.add(SceneItem.of(kind.name(), design.lines().get(kind), look));
      }
    }
    for (int i = 0; i < design.pieces().size(); i++) {
      PieceShape piece = design.pieces().get(i);
      ViewPart part = piece.isDorsal() ? ViewPart.SHELL : ViewPart.TROUGH;
      Look look = Look.of(piece.isDorsal() ? palette.shell() : palette.trough());
      if (!colouring.colours().isEmpty()) {
        look = look.withColours(colouring.colours().get(i).orElse(null));
      }
      SceneItem item =
          SceneItem.of(part.toString(), piece.shape(), look)
              .at(pulled(design, piece, choice.pull()));
      boolean valueless = !colouring.colours().isEmpty() && colouring.colours().get(i).isEmpty();
      add(items, valueless ? seenThrough(choice.of(part)) : choice.of(part), item);
    }
    return items;
  }

  /** A piece without values must not hide those of another. */
  private static PartVisibility seenThrough(PartVisibility chosen) {
    return chosen == PartVisibility.SHOWN ? PartVisibility.SEE_THROUGH : chosen;
  }

  private static SceneItem skin(DesignShapes design, DisplayChoice choice) {
    return SceneItem.of(ViewPart.FINGER.toString(), design.skin(), Look.of(choice.tone().colour()));
  }

  /** Lighter than the skin, as a nail is. */
  private static SceneItem nail(DesignShapes design, DisplayChoice choice) {
    Color skin = choice.tone().colour();
    Color light =
        new Color(lighter(skin.getRed()), lighter(skin.getGreen()), lighter(skin.getBlue()));
    return SceneItem.of("Nail", design.nail(), Look.of(light));
  }

  private static int lighter(int channel) {
    return channel + (255 - channel) * 2 / 5;
  }

  private static void add(List<SceneItem> items, PartVisibility visibility, SceneItem item) {
    switch (visibility) {
      case SHOWN -> items.add(item);
      case SEE_THROUGH -> items.add(item.withOpacity(SEE_THROUGH));
      case HIDDEN -> {}
    }
  }

  /** Where a piece goes when it is drawn off the way it was fitted: square to the PIP joint. */
  static Vector3D pulled(DesignShapes design, PieceShape piece, double pull) {
    DigitSurface digit = design.orthosis().digit();
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
