package org.midlateral.viewer.colour;

/** Colour maps, with straight lines between some of their colours. */
public enum ColourMap {
  /** From dark to light, for quantities that begin somewhere: viridis. */
  VIRIDIS(
      0x440154, 0x482878, 0x3e4989, 0x31688e, 0x26828e, 0x1f9e89, 0x35b779, 0x6ece58, 0xb5de2b,
      0xfde725),

  /** From blue through grey to red, for quantities with a sign: cool to warm. */
  COOL_WARM(
      0x3b4cc0, 0x6282ea, 0x8db0fe, 0xb8d0f9, 0xdddddd, 0xf5c4ad, 0xf49a7b, 0xde614c, 0xb40426);

  private final int[] stops;

  ColourMap(int... stops) {
    this.stops = stops;
  }

  /**
   * The colour of a share of the scale.
   *
   * @param share 0 to 1; what lies outside takes the nearest end
   * @return 0xRRGGBB
   */
  public int colour(double share) {
    double at = Math.max(0, Math.min(1, share)) * (stops.length - 1);
    int low = Math.min((int) at, stops.length - 2);
    double part = at - low;
    int colour = 0;
    for (int shift = 16; shift >= 0; shift -= 8) {
      int from = stops[low] >> shift & 255;
      int to = stops[low + 1] >> shift & 255;
      colour |= (int) Math.round(from + part * (to - from)) << shift;
    }
    return colour;
  }
}
