package org.midlateral.viewer.window;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import java.awt.Color;
import java.awt.Font;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import javax.swing.UIManager;
import javax.swing.plaf.FontUIResource;
import org.midlateral.viewer.drawing.Palette;

/** Colours and fonts of the whole program. */
final class Appearance {
  private static final int FONT_SIZE = 13;

  private static final Map<String, String> SHAPES =
      Map.of(
          "Component.focusWidth", "1",
          "Component.arc", "6",
          "Button.arc", "6",
          "TextComponent.arc", "4",
          "ScrollBar.width", "11");

  private Appearance() {}

  /** Applies one of the two appearances, where it is not the one there is. */
  static void apply(boolean dark) {
    Class<?> asked = dark ? FlatDarkLaf.class : FlatLightLaf.class;
    if (UIManager.getLookAndFeel().getClass() == asked) {
      return;
    }
    Palette palette = Palette.of(dark);
    FlatInterFont.install();
    FlatLaf.setGlobalExtraDefaults(defaults(palette));
    UIManager.put("defaultFont", new FontUIResource(FlatInterFont.FAMILY, Font.PLAIN, FONT_SIZE));
    if (dark) {
      FlatDarkLaf.setup();
    } else {
      FlatLightLaf.setup();
    }
    FlatLaf.updateUI();
  }

  private static Map<String, String> defaults(Palette palette) {
    Map<String, String> defaults = new HashMap<>(SHAPES);
    defaults.put("@background", hex(palette.card()));
    defaults.put("@foreground", hex(palette.ink()));
    defaults.put("@disabledForeground", hex(palette.quiet()));
    defaults.put("@accentColor", hex(palette.accent()));
    defaults.put("TextField.placeholderForeground", hex(palette.quiet()));
    String groove = palette.dark() ? "#5a656a" : "#c4c6c1";
    defaults.put("ScrollBar.thumb", groove);
    defaults.put("Slider.trackColor", groove);
    defaults.put("Slider.disabledTrackColor", groove);
    defaults.put("Slider.disabledThumbColor", groove);
    return defaults;
  }

  private static String hex(Color colour) {
    return String.format(Locale.ROOT, "#%06x", colour.getRGB() & 0xFFFFFF);
  }
}
