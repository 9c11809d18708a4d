package org.midlateral.recipe.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.midlateral.document.drawing.Column;
import org.midlateral.document.drawing.Column.ColumnRow;
import org.midlateral.document.drawing.PageFrame;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.document.drawing.PdfFile;

/** The record of making on one page, to be signed. */
public final class RecordSheet {
  /** Name of its file. */
  public static final String FILE = "record.pdf";

  /**
   * Letters of what was found, and files, that are tried until all has room on the page; what has
   * none is in {@code record.json}.
   */
  private static final int[][] ROOM = {{900, 24}, {700, 16}, {350, 12}, {150, 6}, {0, 0}};

  private static final List<String> MEASURED =
      List.of("hand", "digit", "unit", "circumference", "length", "angle", "width", "station");

  private final MakingRecord record;

  private RecordSheet(MakingRecord record) {
    this.record = record;
  }

  /**
   * The file.
   *
   * @param record of a making, its files but this one
   */
  public static byte[] pdf(MakingRecord record) {
    return new RecordSheet(record).bytes();
  }

  private byte[] bytes() {
    PaperSize paper = "in".equals(record.settings().get("unit")) ? PaperSize.LETTER : PaperSize.A4;
    PageFrame frame =
        new PageFrame(
            paper,
            "Record of making",
            record.reference() + ", revision " + record.revision(),
            "It tells what was made and from what. It replaces no inspection and no release.");
    Column column = column(frame, ROOM[0]);
    for (int i = 1; i < ROOM.length && column.top() < frame.bottom(); i++) {
      column = column(frame, ROOM[i]);
    }
    return PdfFile.bytes(
        frame.around(List.of(column.blocks())), "Record of making, " + record.reference());
  }

  private Column column(PageFrame frame, int[] room) {
    Column column = new Column(0, frame.top() - 1, PaperSize.USED_WIDTH);
    made(column, room[0]);
    inputs(column);
    files(column, room[1]);
    signatures(column);
    return column;
  }

  private void made(Column column, int letters) {
    Program program = record.program();
    column.heading("What was made");
    column.paragraph(
        "State: "
            + record.state()
            + ". Made "
            + (record.made() == null ? "at a time that is not recorded" : record.made())
            + " by "
            + program.name()
            + " "
            + program.version()
            + ", build "
            + program.build()
            + ", on Java "
            + program.java()
            + ". From "
            + record.source().place()
            + "; formats: "
            + String.join(", ", record.source().formats())
            + ".");
    if (!record.text().isEmpty()) {
      column.paragraph("Findings: " + shortened(record.text(), letters));
    }
    if (record.former() != null) {
      column.paragraph("The revision before it: " + record.former() + ".");
    }
  }

  private static String shortened(String text, int most) {
    return text.length() <= most ? text : text.substring(0, most) + " … (all in record.json)";
  }

  private void inputs(Column column) {
    column.heading("As it was understood");
    List<String> measured = new ArrayList<>();
    List<String> chosen = new ArrayList<>();
    for (Map.Entry<String, String> entry : record.settings().entrySet()) {
      String group = entry.getKey().split("\\.", 2)[0];
      if (!group.equals("reference") && !group.equals("note")) {
        (MEASURED.contains(group) ? measured : chosen).add(entry.getKey() + " " + entry.getValue());
      }
    }
    column.paragraph(String.join("; ", measured) + ".");
    column.paragraph(String.join("; ", chosen) + ".");
  }

  private void files(Column column, int most) {
    column.heading("Files, with the first sixteen figures of their SHA-256");
    List<ColumnRow> rows = new ArrayList<>(List.of(ColumnRow.of("file", "bytes", "SHA-256")));
    record.files().entrySet().stream()
        .limit(most)
        .map(
            file ->
                ColumnRow.of(
                    file.getKey(),
                    "" + file.getValue().bytes(),
                    file.getValue().sha256().substring(0, 16)))
        .forEach(rows::add);
    column.table(List.of(0.6, 0.15, 0.25), rows);
    if (record.files().size() > most) {
      column.paragraph("And " + (record.files().size() - most) + " more, in record.json.");
    }
  }

  private static void signatures(Column column) {
    column.heading("To be filled in and signed");
    column.form(
        List.of(0.5, 0.5),
        List.of(
            ColumnRow.of("Material's lot", "Machine"),
            ColumnRow.of("", ""),
            ColumnRow.of("Made by (code), date", "Inspected by (code), date"),
            ColumnRow.of("", "")));
  }
}
