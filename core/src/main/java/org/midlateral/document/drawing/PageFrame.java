package org.midlateral.document.drawing;

import java.util.ArrayList;
import java.util.List;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Page.Block;
import org.midlateral.document.drawing.Page.Role;

/**
 * What is alike on all pages of a document: a head, and a foot that warns.
 *
 * @param paper it is printed on
 * @param title of the document
 * @param subject which order it is about
 * @param cautions set in the foot, under the warning
 */
public record PageFrame(PaperSize paper, String title, String subject, String cautions) {
  /** Stands on every page and every drawing that may leave the bench alone. */
  public static final String WARNING =
      "Estimate, for comparison; does not clear a piece for use; local rules and licensed practice"
          + " come first.";

  private static final double HEAD = 12;
  private static final double TITLE_TYPE = 5.2;
  private static final double BESIDE_TITLE = 6;
  private static final double SUBJECT_TYPE = 3.2;

  /** Small enough that the longest note of the widest signs takes three lines (mm). */
  private static final double LONG_SUBJECT_TYPE = 2.3;

  private static final double LONG_SUBJECT_LINE = 2.8;
  private static final double FOOT_TYPE = 2.5;
  private static final double FOOT_LINE = 3.3;

  /** Upper edge of the room between head and foot (mm). */
  public double top() {
    return PaperSize.USED_HEIGHT - HEAD;
  }

  /** Lower edge of the room between head and foot (mm). */
  public double bottom() {
    return (2 + foot().size()) * FOOT_LINE + 1.5;
  }

  private List<String> foot() {
    return Typeface.REGULAR.wrapped(cautions, FOOT_TYPE, PaperSize.USED_WIDTH);
  }

  /** The pages with head and foot, numbered. */
  public List<Page> around(List<List<Block>> contents) {
    List<Page> pages = new ArrayList<>();
    for (int i = 0; i < contents.size(); i++) {
      List<Block> blocks = new ArrayList<>();
      Sketch head = new Sketch();
      head.bold(title, 0, 3.2, TITLE_TYPE);
      subject(head);
      head.line(Pen.EDGE, 0, 0, PaperSize.USED_WIDTH, 0);
      blocks.add(Block.text(Role.TITLE, head.drawing(PaperSize.USED_WIDTH, 8), 0, top() + 3));
      blocks.addAll(contents.get(i));
      blocks.add(foot("page " + (i + 1) + " of " + contents.size()));
      pages.add(new Page(paper, blocks));
    }
    return pages;
  }

  /** On the title's line where it has room beside it, else smaller, in lines below one another. */
  private void subject(Sketch head) {
    double room = PaperSize.USED_WIDTH - Typeface.BOLD.width(title, TITLE_TYPE) - BESIDE_TITLE;
    if (Typeface.REGULAR.width(subject, SUBJECT_TYPE) <= room) {
      head.text(subject, PaperSize.USED_WIDTH, 3.2, SUBJECT_TYPE, Anchor.END, 0);
      return;
    }
    List<String> lines = Typeface.REGULAR.wrapped(subject, LONG_SUBJECT_TYPE, room);
    for (int i = 0; i < lines.size(); i++) {
      double y = 1.2 + (lines.size() - 1 - i) * LONG_SUBJECT_LINE;
      head.text(lines.get(i), PaperSize.USED_WIDTH, y, LONG_SUBJECT_TYPE, Anchor.END, 0);
    }
  }

  private Block foot(String number) {
    double y = bottom() - FOOT_LINE - 1.5;
    Sketch foot = new Sketch();
    foot.line(Pen.EDGE, 0, y + FOOT_LINE, PaperSize.USED_WIDTH, y + FOOT_LINE);
    foot.bold(WARNING, 0, y, FOOT_TYPE);
    foot.text(number, PaperSize.USED_WIDTH, y, FOOT_TYPE, Anchor.END, 0);
    for (String line : foot()) {
      y -= FOOT_LINE;
      foot.text(line, 0, y, FOOT_TYPE);
    }
    return Block.text(Role.PARAGRAPH, foot.drawing(PaperSize.USED_WIDTH, bottom()), 0, 0);
  }
}
