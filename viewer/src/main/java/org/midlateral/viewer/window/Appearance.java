package org.midlateral.viewer.window;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import java.awt.Color;
import java.awt.Font;
import java.util.Map;
import javax.swing.UIManager;
import javax.swing.plaf.FontUIResource;
import org.midlateral.viewer.view.Palette;

/** Colours and fonts of the whole program. */
final class Appearance {
  private static final int FONT_SIZE = 13;

  private Appearance() {}

  /** Puts one of the two appearances on. */
  static void wear(boolean dark) {
    Palette palette = Palette.of(dark);
    FlatInterFont.installLazy();
    FlatLaf.setGlobalExtraDefaults(
        Map.of(
            "@background",
            hex(palette.card()),
            "@foreground",
            hex(palette.ink()),
            "@disabledForeground",
            hex(palette.quiet()),
            "@accentColor",
            hex(palette.accent()),
            "Component.focusWidth",
            "1",
            "Component.arc",
            "6",
            "Button.arc",
            "6",
            "TextComponent.arc",
            "4",
            "ScrollBar.width",
            "11",
            "TextField.placeholderForeground",
            hex(palette.quiet())));
    UIManager.put("defaultFont", new FontUIResource(FlatInterFont.FAMILY, Font.PLAIN, FONT_SIZE));
    if (dark) {
      FlatDarkLaf.setup();
    } else {
      FlatLightLaf.setup();
    }
    FlatLaf.updateUI();
  }

  private static String hex(Color colour) {
    return String.format("#%06x", colour.getRGB() & 0xFFFFFF);
  }
}
