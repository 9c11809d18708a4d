package org.midlateral.viewer.drawing;

import java.awt.Color;

/** What the finger is drawn in. */
public enum SkinTone {
  NEUTRAL("Neutral", 0xBDBAB2),
  TONE_1("Tone 1, lightest", 0xF2D6C4),
  TONE_2("Tone 2", 0xDFB598),
  TONE_3("Tone 3", 0xC28E6B),
  TONE_4("Tone 4", 0x94613F),
  TONE_5("Tone 5, darkest", 0x5B3A28);

  private final String title;
  private final Color colour;

  SkinTone(String title, int rgb) {
    this.title = title;
    this.colour = new Color(rgb);
  }

  public Color colour() {
    return colour;
  }

  @Override
  public String toString() {
    return title;
  }
}
