package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.midlateral.document.drawing.Column;
import org.midlateral.document.drawing.Column.ColumnRow;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.drawing.Page.Block;
import org.midlateral.document.drawing.PageFrame;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.document.drawing.PdfFile;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;

/** A blank form to take the measurements on, with a drawing that shows every level. */
public final class MeasuringForm {
  private static final double GUTTER = 8;
  private static final double HALF = (PaperSize.USED_WIDTH - GUTTER) / 2;

  private MeasuringForm() {}

  /** The form as a PDF of one page. */
  public static byte[] pdf(LengthUnit unit, PaperSize paper) {
    PageFrame frame =
        new PageFrame(
            paper,
            "Measuring form",
            "all lengths in " + Lengths.ofARuler(unit).plural(),
            BenchDocuments.caution("not-for"));
    List<Block> blocks = new ArrayList<>();
    Column wide = new Column(0, frame.top() - 1, PaperSize.USED_WIDTH);
    wide.paragraph(
            "Reference (a code of your own, no name): ____________________      Date: ______________"
                + "      Initials of who measured: ________")
        .gap(2);
    blocks.addAll(wide.blocks());
    Column way =
        new Column(0, wide.top(), PaperSize.USED_WIDTH)
            .choices("First of all: the pieces are", List.of("moulded by hand", "printed"))
            .gap(1);
    blocks.addAll(way.blocks());
    Column hand = new Column(0, way.top(), HALF / 2).choices("Hand:", List.of("right", "left"));
    Column finger =
        new Column(HALF + GUTTER, way.top(), HALF)
            .choices("Finger:", List.of("index", "middle", "ring", "little"));
    blocks.addAll(hand.blocks());
    blocks.addAll(finger.blocks());
    double top = hand.top() - 3;
    Column left = new Column(0, top, HALF);
    left.figure(
        "The palmar side of a finger with five levels to measure round and four lengths.",
        LevelDrawing.palmar(HALF));
    Column right = new Column(HALF + GUTTER, top, HALF);
    right.figure(
        "The finger from the side, short of full extension at the PIP joint.",
        LevelDrawing.side(HALF));
    right.heading("How");
    Stream.of(
            "Warm hand, rested, palm up; always at the same time of day.",
            "Tape round: snug, flat, without denting the skin; read where it meets itself.",
            "Lengths: along the palmar side of the straightened finger, crease to crease.",
            "Palmar crease: the distal one; for the index finger the radial end of the proximal one.",
            "Web: the deeper of the two beside the finger.",
            "A finger that swells: measure it in the evening, when it is thickest.",
            "Room: from the PIP joint's side to the neighbour, both fingers lightly closed.",
            "Widths, where you have a calliper: side to side, touching, not squeezing.",
            "Angle: goniometer on the dorsal side, held as straight as it goes without force.",
            "Take each reading twice; more than "
                + Lengths.ofARuler(unit).with(2)
                + " apart: take a third.")
        .forEach(text -> right.item("•", text));
    blocks.addAll(left.blocks());
    blocks.addAll(right.blocks());
    double row = Math.min(left.top(), right.top()) - 2;
    Column round = roundAndAcross(row);
    Column along = alongAndAngles(row);
    blocks.addAll(round.blocks());
    blocks.addAll(along.blocks());
    blocks.addAll(before(Math.min(round.top(), along.top()) - 1).blocks());
    return PdfFile.bytes(frame.around(List.of(blocks)), "Measuring form");
  }

  private static Column roundAndAcross(double top) {
    Column left = new Column(0, top, HALF);
    left.heading("Girths and widths");
    return left.form(
        List.of(0.52, 0.24, 0.24),
        List.of(
            ColumnRow.of("level", "girth", "width"),
            row("width.web", "web", "–", ""),
            row("circumference.proximal-phalanx", "proximal phalanx, midway", "", ""),
            row("circumference.pip", "PIP joint, widest", "", ""),
            row("circumference.middle-phalanx", "middle phalanx, midway", "", ""),
            row("circumference.dip", "DIP joint (optional)", "", ""),
            row("circumference.tip", "tip, midway on the pulp", "", ""),
            ColumnRow.of("sore spots: where, how large", "", "")));
  }

  private static Column alongAndAngles(double top) {
    Column right = new Column(HALF + GUTTER, top, HALF);
    right.heading("Along, and angles");
    return right.form(
        List.of(0.70, 0.30),
        List.of(
            ColumnRow.of("length or angle", "reading"),
            row("length.palmar-crease-to-web", "palmar crease to web", ""),
            row("length.web-to-pip", "web to PIP crease", ""),
            row("length.pip-to-dip", "PIP crease to DIP crease", ""),
            row("length.dip-to-tip", "DIP crease to the end of the pulp", ""),
            row("angle.pip-extension-deficit", "PIP extension deficit (0 is straight)", "°"),
            row("room.radial", "room beside the PIP joint, radial", ""),
            row("room.ulnar", "room beside the PIP joint, ulnar", "")));
  }

  /** A row that begins with the letter by which the measurement file names the reading. */
  private static ColumnRow row(String path, String name, String... cells) {
    InputKey key = KeyTable.standard().find(path).orElseThrow();
    List<String> row = new ArrayList<>(List.of(key.letter().orElseThrow() + "  " + name));
    row.addAll(List.of(cells));
    return new ColumnRow(row);
  }

  private static Column before(double top) {
    return new Column(0, top, PaperSize.USED_WIDTH)
        .heading("Before it is made")
        .tick("Skin whole, no infection.      If not: ________________________________")
        .tick(
            "Feels light touch on both sides of the tip.      If not: ________________________________")
        .tick("The tip, pressed white, turns pink again within 2 seconds.")
        .tick("The joint can be straightened so far by hand, without force or pain.")
        .gap(1)
        .paragraph("Notes:");
  }
}
