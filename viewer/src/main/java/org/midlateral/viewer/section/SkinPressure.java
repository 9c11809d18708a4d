package org.midlateral.viewer.section;

import java.util.Optional;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.joint.JointAnswer;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.joint.JointHeld;
import org.midlateral.recipe.joint.PressureField;
import org.midlateral.recipe.joint.WornOrthosis;

/**
 * What presses on the skin under a design.
 *
 * @param field by place
 * @param worn the pieces on the finger, to ask for others much like them
 * @param passing whether the pieces are only taken to bend as others much like them do: good enough
 *     to colour by until they are computed themselves, and no figure is told of it
 */
public record SkinPressure(PressureField field, WornOrthosis worn, boolean passing) {

  /** The pressure of a joint that was computed. */
  static SkinPressure of(JointHeld held) {
    return new SkinPressure(new PressureField(held), held.worn(), false);
  }

  /** That of a design much like this one, in passing; empty where it cannot be had so. */
  Optional<SkinPressure> carriedTo(Orthosis other) {
    try {
      Optional<WornOrthosis> carried = worn.carriedTo(other);
      if (carried.isEmpty()) {
        return Optional.empty();
      }
      JointAnswer answer =
          carried.get().finger().holdWhole(carried.get().fastening(), carried.get().moment());
      return Optional.of(
          new SkinPressure(new PressureField(other.digit(), answer), carried.get(), true));
    } catch (DesignRefused | NotComputable none) {
      return Optional.empty();
    }
  }
}
