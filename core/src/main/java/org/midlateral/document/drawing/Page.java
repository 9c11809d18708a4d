package org.midlateral.document.drawing;

import java.util.List;
import java.util.Optional;

/**
 * One page: blocks on a sheet of paper.
 *
 * @param paper it is printed on
 * @param blocks in reading order
 */
public record Page(PaperSize paper, List<Block> blocks) {

  public Page {
    blocks = List.copyOf(blocks);
  }

  /** What a block is to someone who hears the page read. */
  public enum Role {
    TITLE("H1"),
    HEADING("H2"),
    PARAGRAPH("P"),
    /** A drawing; its description is read. */
    FIGURE("Figure");

    private final String tag;

    Role(String tag) {
      this.tag = tag;
    }

    /** The standard structure type of ISO 32000. */
    String tag() {
      return tag;
    }
  }

  /**
   * A part of a page.
   *
   * @param role of it
   * @param description of a figure; empty for text
   * @param drawing of it
   * @param x left edge, from the left of the area used (mm)
   * @param y lower edge, from the bottom of the area used (mm)
   * @param window the part of the area used that may be drawn on, where it is less than all
   */
  public record Block(
      Role role,
      String description,
      Drawing drawing,
      double x,
      double y,
      Optional<PageWindow> window) {

    /** Text. */
    public static Block text(Role role, Drawing drawing, double x, double y) {
      return new Block(role, "", drawing, x, y, Optional.empty());
    }

    /** A drawing with a description of it. */
    public static Block figure(String description, Drawing drawing, double x, double y) {
      return new Block(Role.FIGURE, description, drawing, x, y, Optional.empty());
    }
  }

  /**
   * A rectangle of the area used.
   *
   * @param x left edge (mm)
   * @param y lower edge (mm)
   * @param width (mm)
   * @param height (mm)
   */
  public record PageWindow(double x, double y, double width, double height) {}

  /** From the left of the paper to the area used (mm). */
  double left() {
    return (paper.width() - PaperSize.USED_WIDTH) / 2;
  }

  /** From the bottom of the paper to the area used (mm). */
  double bottom() {
    return (paper.height() - PaperSize.USED_HEIGHT) / 2;
  }
}
