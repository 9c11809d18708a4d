package org.midlateral.viewer.colour;

/** The colour map viridis, between ten of its colours. */
public final class ColourMap {
  private static final int[] STOPS = {
    0x440154, 0x482878, 0x3e4989, 0x31688e, 0x26828e, 0x1f9e89, 0x35b779, 0x6ece58, 0xb5de2b,
    0xfde725
  };

  private ColourMap() {}

  /**
   * The colour of a share of the scale.
   *
   * @param share 0 to 1; what lies outside takes the nearest end
   * @return 0xRRGGBB
   */
  public static int colour(double share) {
    double at = Math.max(0, Math.min(1, share)) * (STOPS.length - 1);
    int low = Math.min((int) at, STOPS.length - 2);
    double part = at - low;
    int colour = 0;
    for (int shift = 16; shift >= 0; shift -= 8) {
      int from = STOPS[low] >> shift & 255;
      int to = STOPS[low + 1] >> shift & 255;
      colour |= (int) Math.round(from + part * (to - from)) << shift;
    }
    return colour;
  }
}
