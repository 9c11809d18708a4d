package org.midlateral.viewer.view;

import java.util.EnumMap;
import java.util.Map;
import org.midlateral.viewer.drawing.SkinTone;

/**
 * What the user chose to see.
 *
 * @param parts how each part is shown
 * @param pull how far each piece is drawn off the finger (mm)
 * @param tone of the skin
 */
public record DisplayChoice(Map<ViewPart, PartVisibility> parts, double pull, SkinTone tone) {
  public DisplayChoice {
    parts = Map.copyOf(parts);
  }

  /** What is seen at the start. */
  public static DisplayChoice first() {
    Map<ViewPart, PartVisibility> parts = new EnumMap<>(ViewPart.class);
    for (ViewPart part : ViewPart.values()) {
      parts.put(part, PartVisibility.SHOWN);
    }
    return new DisplayChoice(parts, 0, SkinTone.NEUTRAL);
  }

  public PartVisibility of(ViewPart part) {
    return parts.get(part);
  }

  public DisplayChoice with(ViewPart part, PartVisibility visibility) {
    Map<ViewPart, PartVisibility> changed = new EnumMap<>(parts);
    changed.put(part, visibility);
    return new DisplayChoice(changed, pull, tone);
  }

  public DisplayChoice withPull(double millimetres) {
    return new DisplayChoice(parts, millimetres, tone);
  }

  public DisplayChoice withTone(SkinTone other) {
    return new DisplayChoice(parts, pull, other);
  }
}
