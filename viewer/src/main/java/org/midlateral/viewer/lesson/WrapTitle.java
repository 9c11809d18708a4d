package org.midlateral.viewer.lesson;

import java.util.Locale;
import org.midlateral.mechanics.RigidityBlock;

/** What a trough of the comparison is called, after the share of the girth that it covers. */
final class WrapTitle {
  private WrapTitle() {}

  static String of(RigidityBlock.Wrap wrap) {
    if (wrap.wrap() == 1) {
      return "Closed";
    }
    return brief(wrap) + " of the girth";
  }

  /** The same where what the share is of stands beside it. */
  static String brief(RigidityBlock.Wrap wrap) {
    if (wrap.wrap() == 1) {
      return "Closed";
    }
    String share = String.format(Locale.ROOT, "%.2f", wrap.wrap());
    return (wrap.wrap() == 0.5 ? "Half, " : "Shallow, ") + share;
  }
}
