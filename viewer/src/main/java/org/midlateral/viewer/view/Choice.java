package org.midlateral.viewer.view;

import java.util.EnumMap;
import java.util.Map;

/**
 * What the user chose to see.
 *
 * @param parts how each part is shown
 * @param pull how far each piece is drawn off the finger (mm)
 * @param tone of the skin
 */
public record Choice(Map<Part, Visibility> parts, double pull, SkinTone tone) {
  public Choice {
    parts = Map.copyOf(parts);
  }

  /** What is seen at the start. */
  public static Choice first() {
    Map<Part, Visibility> parts = new EnumMap<>(Part.class);
    for (Part part : Part.values()) {
      parts.put(part, Visibility.SHOWN);
    }
    return new Choice(parts, 0, SkinTone.NEUTRAL);
  }

  public Visibility of(Part part) {
    return parts.get(part);
  }

  public Choice with(Part part, Visibility visibility) {
    Map<Part, Visibility> changed = new EnumMap<>(parts);
    changed.put(part, visibility);
    return new Choice(changed, pull, tone);
  }

  public Choice withPull(double millimetres) {
    return new Choice(parts, millimetres, tone);
  }

  public Choice withTone(SkinTone other) {
    return new Choice(parts, pull, other);
  }
}
