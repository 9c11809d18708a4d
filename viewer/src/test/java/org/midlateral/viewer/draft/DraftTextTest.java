package org.midlateral.viewer.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.measurement.file.Template;
import org.midlateral.viewer.draft.DraftText.NotADraft;
import org.midlateral.viewer.sample.Sample;

/** Invariant: what is read and written again says the same, as typed. */
class DraftTextTest {

  @ParameterizedTest
  @EnumSource
  void aSampleWrittenAgainIsTheSameOrder(Sample sample) throws NotADraft {
    Order before = Orders.parse(sample.text(), sample.file(), List.of()).order();
    String written = DraftText.write(DraftText.read(sample.text()));
    Orders.Result after = Orders.parse(written, "again", List.of());
    assertThat(after.errors()).isEmpty();
    assertThat(after.order()).isEqualTo(before);
  }

  @Test
  void fractionsAndQuotesStayAsTyped() throws NotADraft {
    Draft draft = DraftText.read("circumference: {pip: 2-1/16\"}\nunit: in");
    assertThat(draft.get("circumference.pip")).isEqualTo("2-1/16\"");
    assertThat(DraftText.read(DraftText.write(draft))).isEqualTo(draft);
  }

  @Test
  void wrongTextsAreKeptAndReportedAtTheirKeys() throws NotADraft {
    String nasty = "#: {[ \"' & *x %";
    Draft draft = DraftText.read(Sample.SLIM.text()).with("trough.wall", nasty);
    assertThat(DraftText.read(DraftText.write(draft)).get("trough.wall")).isEqualTo(nasty);
    Orders.Result result = Orders.parse(DraftText.write(draft), "x", List.of());
    assertThat(result.errors()).extracting(e -> e.key()).containsExactly("trough.wall");
  }

  @Test
  void itemsOfAListAreAddedAndTakenOut() throws NotADraft {
    Draft draft = DraftText.read(Sample.BULBOUS.text());
    assertThat(draft.items("relief.bubbles")).isEqualTo(1);
    Draft two = draft.with("relief.bubbles[1].station", "30").with("relief.bubbles[1].girth", "2");
    assertThat(two.items("relief.bubbles")).isEqualTo(2);
    Draft one = two.withoutItem("relief.bubbles", 0);
    assertThat(one.items("relief.bubbles")).isEqualTo(1);
    assertThat(one.get("relief.bubbles[0].station")).isEqualTo("30");
  }

  @Test
  void theTemplateIsReadWithItsEmptyKeysLeftOut() throws NotADraft {
    Draft draft = DraftText.read(Template.text(LengthUnit.MM));
    assertThat(Orders.parse(DraftText.write(draft), "x", List.of()).ok()).isTrue();
    assertThat(DraftText.read("a:\nb: ~\nc: 1").values()).containsEntry("c", "1");
  }

  @Test
  void whatIsNoMappingIsRefused() {
    assertThatThrownBy(() -> DraftText.read("just a sentence")).isInstanceOf(NotADraft.class);
    assertThatThrownBy(() -> DraftText.read("a: [unclosed")).isInstanceOf(NotADraft.class);
    assertThatThrownBy(() -> DraftText.read("")).isInstanceOf(NotADraft.class);
  }
}
