package org.midlateral.viewer.lesson;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.midlateral.mechanics.JointBlock.JointFigures;
import org.midlateral.mechanics.RigidityBlock;
import org.midlateral.viewer.colour.Scale;
import org.midlateral.viewer.drawing.Palette;

/** The figures under the wraps: a row for each quantity, a column for each wrap. */
final class FigureTable {
  private static final int MARGIN = 14;
  private static final int TOP = 6;
  private static final String NONE = "\u2013";
  private static final String SHARE = "Height, share of the girth";
  private static final String AGAINST = "against the half";

  private static final List<String> CLOSED =
      List.of(
          "Closed: the half with the other half joined to it along both edges, over the whole length"
              + " of the sides.",
          "By finite elements it loses about a sixth more than a tube with square ends: its corners"
              + " are rounded.");

  private static final List<FigureRow> ROWS =
      List.of(
          new FigureRow(
              "EI at the PIP joint, N·mm²",
              "Elastic modulus times second moment of area of the section at the PIP axis",
              wrap -> Optional.of(wrap.bendingAtPip())),
          new FigureRow(
              "Held at, in its closure",
              "The angle of the PIP joint once clearance, skin, closure and plastic have given way",
              wrap -> Optional.ofNullable(wrap.joint()).map(JointFigures::angleHeld)),
          new FigureRow(
              "Bend of the piece, finite elements",
              "The angle by which the piece bends under the moment, sections free to change shape",
              wrap ->
                  Optional.ofNullable(wrap.finiteElements())
                      .map(RigidityBlock.WrapByShell::extensionLost)),
          new FigureRow(
              "Bend of the piece, as a beam",
              "The same where sections keep their shape",
              wrap -> Optional.of(wrap.extensionLost())));

  private final Comparison comparison;
  private final Step step;
  private final Palette palette;

  /**
   * A quantity.
   *
   * @param name with its unit
   * @param meaning what it is of
   * @param value of a wrap; empty where it could not be had
   */
  private record FigureRow(
      String name, String meaning, Function<RigidityBlock.Wrap, Optional<Double>> value) {
    String text(RigidityBlock.Wrap wrap) {
      String unit = name.startsWith("EI") ? "" : "°";
      return value.apply(wrap).map(v -> Scale.text(v) + unit).orElse(NONE);
    }

    String ratio(RigidityBlock.Wrap wrap, RigidityBlock.Wrap half) {
      return value
          .apply(wrap)
          .flatMap(v -> value.apply(half).map(h -> "× " + Scale.text(v / h)))
          .orElse(NONE);
    }
  }

  FigureTable(Comparison comparison, Step step, Palette palette) {
    this.comparison = comparison;
    this.step = step;
    this.palette = palette;
  }

  /** Width of the rows' names (px). */
  static int labels(FontMetrics font) {
    return ROWS.stream().mapToInt(row -> font.stringWidth(row.name())).max().orElse(0) + MARGIN;
  }

  /** What the figures are of that stand at a height below its upper edge (px); null for none. */
  static String meaning(FontMetrics font, int y) {
    int row = (y - TOP - font.getHeight()) / (2 * font.getHeight());
    boolean figures = y > TOP + font.getHeight() && row < ROWS.size();
    return figures ? ROWS.get(row).meaning() : null;
  }

  /** Height of all of it (px). */
  static int height(FontMetrics font) {
    return font.getHeight() * (2 * ROWS.size() + 1 + CLOSED.size()) + 2 * TOP;
  }

  /**
   * Draws it.
   *
   * @param middles of the columns (px)
   */
  void draw(Graphics2D g, double[] middles) {
    FontMetrics font = g.getFontMetrics();
    float y = TOP + font.getAscent();
    g.setColor(palette.ink());
    Font plain = g.getFont();
    g.drawString(SHARE, MARGIN, y);
    g.setFont(plain.deriveFont(Font.BOLD));
    for (int i = 0; i < middles.length; i++) {
      centred(g, WrapTitle.brief(wrap(i)), middles[i], y);
    }
    g.setFont(plain);
    for (FigureRow row : ROWS) {
      row(g, row, middles, y + font.getHeight());
      y += 2 * font.getHeight();
    }
    g.setColor(palette.quiet());
    for (String line : CLOSED) {
      y += font.getHeight();
      g.drawString(line, MARGIN, y);
    }
  }

  private void row(Graphics2D g, FigureRow row, double[] middles, float y) {
    float below = y + g.getFontMetrics().getHeight();
    boolean ratios = step.tellsRatios(comparison);
    g.setColor(palette.ink());
    g.drawString(row.name(), MARGIN, y);
    g.setColor(palette.quiet());
    if (ratios) {
      g.drawString(AGAINST, 2 * MARGIN, below);
    }
    for (int i = 0; i < middles.length; i++) {
      if (step.isLoaded(i)) {
        g.setColor(palette.ink());
        centred(g, row.text(wrap(i)), middles[i], y);
        if (ratios) {
          g.setColor(palette.quiet());
          centred(g, row.ratio(wrap(i), comparison.half().figures()), middles[i], below);
        }
      }
    }
  }

  private RigidityBlock.Wrap wrap(int i) {
    return comparison.cases().get(i).figures();
  }

  private static void centred(Graphics2D g, String text, double x, float y) {
    g.drawString(text, (float) (x - g.getFontMetrics().stringWidth(text) / 2.0), y);
  }
}
