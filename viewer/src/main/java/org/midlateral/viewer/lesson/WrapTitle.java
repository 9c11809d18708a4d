package org.midlateral.viewer.lesson;

import java.util.Locale;
import org.midlateral.mechanics.RigidityBlock;

/** What a wrap is called. */
final class WrapTitle {
  private WrapTitle() {}

  static String of(RigidityBlock.Wrap wrap) {
    if (wrap.wrap() == 1) {
      return "Closed";
    }
    String share = String.format(Locale.ROOT, "%.2f", wrap.wrap());
    return wrap.wrap() == 0.5 ? "Half, wrap " + share : "Shallow, wrap " + share;
  }
}
