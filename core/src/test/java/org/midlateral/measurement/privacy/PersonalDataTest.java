package org.midlateral.measurement.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.file.OrderText;
import org.midlateral.measurement.file.Orders;

/** Invented names only. */
class PersonalDataTest {
  private static final List<String> CELLS =
      List.of(
          "hand=right",
          "digit=ring",
          "circumference.proximal-phalanx=62",
          "circumference.pip=66",
          "circumference.middle-phalanx=56",
          "circumference.tip=48",
          "length.palmar-crease-to-web=21",
          "length.web-to-pip=24",
          "length.pip-to-dip=23",
          "length.dip-to-tip=24");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Ada-Example",
        "AdaExample",
        "Example.A",
        "A.Example",
        "dr-Example",
        "p-1961-03-09",
        "19610309",
        "09.03.1961",
        "ring-9-3-1961",
        "ada-example",
        "example.ada",
        "EXAMPLE-A",
        "EXAMPLE_ADA",
        "a.example",
        "Ada-Example-ring",
        "ada-example-2",
        "ada.example2",
        "ada-example-a1",
        "A-Example-03",
        "a-example-03",
        "A-example",
        "12.3.54",
        "12-03-54",
        "540312",
        "120354",
        "12-mar-1954",
        "1954-Mar-12",
        "dob-1954"
      })
  void namesAndDatesEarnACaution(String reference) {
    Orders.Result result = read(reference);
    assertThat(result.ok()).isTrue();
    assertThat(result.cautions()).extracting(Finding::code).contains("personal-data");
    assertThat(result.cautions().get(0).text()).contains(reference);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "demo-ring-a",
        "Demo-7",
        "A17",
        "2026-0412",
        "R.3",
        "L2-R5",
        "99990000",
        "QX-1961",
        "Ring-Left",
        "ring-left-7",
        "Case-A",
        "case-a",
        "Lab-A",
        "Order-Alpha",
        "ORDER-ALPHA",
        "inv-a",
        "T-arth-03",
        "K-stiff-2",
        "inv-000123",
        "tray-a1",
        "tray-a",
        "north-b12",
        "quail-7c",
        "quail-ab3",
        "549999",
        "1-2-3-44-5",
        "123-45-67",
        "QXRT-BNMP",
        "batch-report.csv",
        "demo-index-deficit"
      })
  void codesDoNot(String reference) {
    Orders.Result result = read(reference);
    assertThat(result.ok()).isTrue();
    assertThat(result.cautions()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "for Ada Example",
        "born 9.3.1961, thin skin",
        "ask Dr Example",
        "A. Example called",
        "12. M\u00E4rz 1954",
        "\u00C4da \u00C9xample",
        "for Example, A.",
        "DOB 1954",
        "born 54",
        "born on 3 March 1954",
        "March 3rd, 1954",
        "12.3.54, thin skin",
        "n\u00E9e le 3 f\u00E9vrier 1954"
      })
  void notesThatTellThePersonDoToo(String note) {
    Orders.Result result = read("demo-7", "note=" + note);
    assertThat(result.cautions()).extracting(Finding::key).containsExactly("note");
    assertThat(result.cautions().get(0).text()).contains("leave out");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "thicker liner asked for",
        "Use PLA, not nylon",
        "Second try: 2 mm wider",
        "Ring Finger",
        "Use Elastic Strap",
        "Left Hand; PLA White",
        "Seen Friday. Smoother edges wanted. 3 of 12 done",
        "Wear at night, 8 to 10 hours",
        "from 9.3. on, 1.4 mm wall",
        "in May 2 more"
      })
  void plainNotesDoNot(String note) {
    Orders.Result result = read("demo-7", "note=" + note);
    assertThat(result.cautions()).isEmpty();
    assertThat(result.order().note()).contains(note);
  }

  @Test
  void aNoteSurvivesWriting() {
    Orders.Result result = read("demo-7", "note=say \"ah\": \\ and # too");
    String text = OrderText.write(result.order());
    assertThat(Orders.parse(text, "again", List.of()).order()).isEqualTo(result.order());
  }

  private static Orders.Result read(String reference, String... more) {
    List<String> cells = new ArrayList<>(CELLS);
    cells.add("reference=" + reference);
    cells.addAll(List.of(more));
    return Orders.row(cells, "orders.csv", 2, List.of());
  }
}
