package org.midlateral.viewer.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.file.Template;
import org.midlateral.viewer.sample.Sample;

/** A file that is saved keeps its comments, order and layout. */
class EditedTextTest {
  private static final String FILE =
      """
      # Invented. Ünïcode 𝛼 in a comment.
      hand: right   # as told
      circumference:
        # the widest place
        pip: 70     # read twice
        tip: '50'
      # between sections
      relief:
        make: yes
        bubbles:
          - {station: 12, girth: 10}
      trough: {wall: 1.6, wrap: 0.5}
      # the end
      """;

  private static String edited(Draft draft) {
    return EditedText.of(FILE, draft).orElseThrow();
  }

  @Test
  void nothingChangedNothingChanges() throws Exception {
    assertThat(edited(DraftText.read(FILE))).isEqualTo(FILE);
  }

  @Test
  void aValueIsExchangedWhereItStands() throws Exception {
    Draft draft = DraftText.read(FILE).with("circumference.pip", "72").with("trough.wall", "2");
    assertThat(edited(draft))
        .isEqualTo(FILE.replace("pip: 70 ", "pip: 72 ").replace("wall: 1.6", "wall: 2"));
  }

  @Test
  void aKeyIsTakenOutWithItsLineAndANewOneEndsItsSection() throws Exception {
    Draft draft =
        DraftText.read(FILE)
            .with("circumference.pip", "")
            .with("circumference.dip", "54")
            .with("note", "a: b")
            .with("support.moment", "9");
    assertThat(edited(draft))
        .isEqualTo(
            FILE.replace("  pip: 70     # read twice\n", "")
                    .replace("  tip: '50'\n", "  tip: '50'\n  dip: 54\n")
                    .replace("# the end\n", "")
                + "note: 'a: b'\n# the end\nsupport:\n  moment: 9\n");
  }

  @Test
  void aListIsWrittenAnewAndAllElseStays() throws Exception {
    Draft draft =
        DraftText.read(FILE)
            .with("relief.bubbles[1].station", "30")
            .with("relief.bubbles[1].girth", "2");
    assertThat(edited(draft))
        .isEqualTo(
            FILE.replace(
                "    - {station: 12, girth: 10}\n",
                "    - {station: 12, girth: 10}\n    - {station: 30, girth: 2}\n"));
  }

  @Test
  void whatCannotBeDoneInPlaceIsNotDone() throws Exception {
    Draft draft = DraftText.read(FILE).with("trough.liner", "1");
    assertThat(EditedText.of(FILE, draft)).isEmpty();
    assertThat(DraftText.read(EditedText.write(draft, FILE))).isEqualTo(draft);
  }

  /** Keys of every sample and of the template taken out, put in and changed at random. */
  @ParameterizedTest
  @EnumSource
  void whateverIsChangedIsReadBackAndTheCommentsStay(Sample sample) throws Exception {
    Random random = new Random(sample.ordinal());
    for (String text : List.of(sample.text(), Template.text(LengthUnit.MM))) {
      int kept = 0;
      for (int round = 0; round < 40; round++) {
        Draft draft = DraftText.read(text);
        List<String> paths =
            draft.values().keySet().stream().filter(path -> !path.contains("[")).toList();
        for (int i = 0; i < 5; i++) {
          String path = paths.get(random.nextInt(paths.size()));
          String[] others = {"", "7", "a: 'b' # c", "2 1/2 in"};
          draft = draft.with(path, others[random.nextInt(others.length)]);
        }
        draft = draft.with("note", "n" + round).with("trough.wall", "1." + round % 10);
        String written = EditedText.write(draft, text);
        assertThat(DraftText.read(written)).isEqualTo(draft);
        kept += text.lines().filter(l -> l.startsWith("#")).allMatch(written::contains) ? 1 : 0;
      }
      assertThat(kept).isGreaterThan(20);
    }
  }
}
