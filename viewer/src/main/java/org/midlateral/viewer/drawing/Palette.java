package org.midlateral.viewer.drawing;

import java.awt.Color;

/**
 * Colours of one appearance.
 *
 * @param dark whether it is the dark one
 * @param paper behind pictures
 * @param ink of text and outlines
 * @param quiet of less important text and lines
 * @param card behind text that lies over a picture
 * @param accent of what is chosen
 * @param trough the volar piece
 * @param shell the dorsal piece
 * @param liner a padding liner
 * @param level rings of the tape
 * @param crease creases and the web
 * @param axis a joint's axis
 * @param midlateral the mid-lateral lines
 * @param caution what needs care
 * @param refusal what cannot be
 */
public record Palette(
    boolean dark,
    Color paper,
    Color ink,
    Color quiet,
    Color card,
    Color accent,
    Color trough,
    Color shell,
    Color liner,
    Color level,
    Color crease,
    Color axis,
    Color midlateral,
    Color caution,
    Color refusal) {

  /** For a bright room. */
  public static final Palette LIGHT =
      new Palette(
          false,
          new Color(0xF3F1EA),
          new Color(0x22282B),
          new Color(0x586166),
          new Color(0xFBFAF6),
          new Color(0x1F6B7A),
          new Color(0x4A97A8),
          new Color(0xD8A24A),
          new Color(0xC7A6C9),
          new Color(0x3C4448),
          new Color(0x8A3B2E),
          new Color(0x5B3F8C),
          new Color(0x1E7A4B),
          new Color(0x8A5A00),
          new Color(0xA8281E));

  /** For a dim one. */
  public static final Palette DARK =
      new Palette(
          true,
          new Color(0x1E2427),
          new Color(0xECEAE3),
          new Color(0xA9B1B4),
          new Color(0x2A3236),
          new Color(0x5FB6C6),
          new Color(0x4FA3B5),
          new Color(0xDDAA55),
          new Color(0xB08DB3),
          new Color(0xE2E5E6),
          new Color(0xF08A76),
          new Color(0xB79AE8),
          new Color(0x6FD09B),
          new Color(0xE6B450),
          new Color(0xFF8A7C));

  /** One of the two. */
  public static Palette of(boolean dark) {
    return dark ? DARK : LIGHT;
  }
}
