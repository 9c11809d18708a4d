package org.midlateral.document.picture;

/**
 * How bright a surface looks: a light at the eye, a stronger one over the left shoulder, a weak one
 * from the right, a soft sky, and a faint gloss. Computed in linear light, the picture's axes being
 * x right, y down, z to the eye.
 */
final class Lighting {
  private static final double[] KEY = unit(-0.5, -0.75, 0.7);
  private static final double[] FILL = unit(0.8, 0.1, 0.45);
  private static final double[] HALF = unit(KEY[0], KEY[1], KEY[2] + 1);

  /** sRGB to linear light, by byte. */
  private static final float[] LINEAR = new float[256];

  static {
    for (int i = 0; i < 256; i++) {
      double s = i / 255.0;
      LINEAR[i] = (float) (s <= 0.04045 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4));
    }
  }

  /** Linear light to sRGB, by steps fine enough that no byte is left out. */
  private static final byte[] ENCODED = new byte[1 << 13];

  static {
    for (int i = 0; i < ENCODED.length; i++) {
      double l = (double) i / (ENCODED.length - 1);
      double s = l <= 0.0031308 ? 12.92 * l : 1.055 * Math.pow(l, 1 / 2.4) - 0.055;
      ENCODED[i] = (byte) Math.round(255 * s);
    }
  }

  private Lighting() {}

  /** Linear light of a byte of sRGB. */
  static float linear(int value) {
    return LINEAR[value & 255];
  }

  /** The byte of sRGB for linear light. */
  static int encoded(double light) {
    double l = Math.max(0, Math.min(1, light));
    return ENCODED[(int) (l * (ENCODED.length - 1) + 0.5)] & 255;
  }

  /** Share of its own colour that a surface gives back. */
  static double diffuse(float x, float y, float z) {
    double key = Math.max(0, x * KEY[0] + y * KEY[1] + z * KEY[2]);
    double fill = Math.max(0, x * FILL[0] + y * FILL[1] + z * FILL[2]);
    double sky = 0.5 - 0.5 * y;
    return 0.14 + 0.14 * sky + 0.48 * key + 0.16 * fill + 0.24 * z;
  }

  /** White light added by the gloss. */
  static double gloss(float x, float y, float z) {
    double d = Math.max(0, x * HALF[0] + y * HALF[1] + z * HALF[2]);
    double d4 = d * d * d * d;
    double d16 = d4 * d4 * d4 * d4;
    return 0.06 * d16 * d16;
  }

  private static double[] unit(double x, double y, double z) {
    double length = Math.sqrt(x * x + y * y + z * z);
    return new double[] {x / length, y / length, z / length};
  }
}
