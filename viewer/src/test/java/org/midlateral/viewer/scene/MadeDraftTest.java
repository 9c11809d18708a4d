package org.midlateral.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.OrderText;
import org.midlateral.measurement.file.Orders;
import org.midlateral.viewer.draft.Draft;
import org.midlateral.viewer.draft.DraftText;

class MadeDraftTest {
  private static final List<String> COARSE = List.of("print.edge-length=1.2 mm");

  private static MadeDraft made(String... more) throws Exception {
    List<String> all = new ArrayList<>(COARSE);
    all.addAll(List.of(more));
    Order order = Orders.read(Path.of("../samples/slim-little.yaml"), all).order();
    return MadeDraft.of(DraftText.read(OrderText.write(order)));
  }

  /** The trough is shown, and first of all it is said that its shell is missing. */
  @Test
  void aTroughWithoutItsShellIsShown() throws Exception {
    MadeDraft part = made("dorsal-shell.length=60");

    assertThat(part.shapes().orElseThrow().pieces()).hasSize(1);
    assertThat(part.findings().get(0).severity()).isEqualTo(Finding.Severity.REFUSAL);
    assertThat(part.findings().get(0).text()).startsWith("The dorsal shell is missing");
    assertThat(made().shapes().orElseThrow().pieces()).hasSize(2);
  }

  /** What is drawn of the finger need not be made, nor handed to the renderer, again. */
  @Test
  void theSameFingerIsShownAgain() throws Exception {
    MadeDraft before = made();
    MadeDraft thicker = MadeDraft.of(before.draft().with("trough.wall", "2.2 mm"), before.shapes());
    MadeDraft swollen =
        MadeDraft.of(before.draft().with("circumference.pip", "62 mm"), before.shapes());
    DesignShapes first = before.shapes().orElseThrow();

    assertThat(thicker.shapes().orElseThrow().skin()).isSameAs(first.skin());
    assertThat(thicker.shapes().orElseThrow().landmarks()).isEqualTo(first.landmarks());
    assertThat(thicker.shapes().orElseThrow().pieces()).isNotEqualTo(first.pieces());
    assertThat(swollen.shapes().orElseThrow().skin()).isNotSameAs(first.skin());
  }

  @Test
  void whatIsCalledOffIsNoDefect() throws Exception {
    Draft draft = made().draft();
    Thread.currentThread().interrupt();
    try {
      assertThatThrownBy(() -> MadeDraft.of(draft)).isInstanceOf(CancellationException.class);
    } finally {
      Thread.interrupted();
    }
    assertThat(MadeDraft.of(draft).shapes()).isPresent();
  }

  @Test
  void aRefusedTroughCanStillBeInspected() throws Exception {
    MadeDraft refused = made("trough.proximal-margin=15", "trough.web-clearance=1");

    assertThat(refused.shapes()).isEmpty();
    assertThat(refused.order()).isPresent();
    assertThat(refused.findings().get(0).code()).isEqualTo("tongue-short");
  }

  @Test
  void aDefectIsAFindingThatNamesItsFile() throws Exception {
    Order order =
        Orders.read(Path.of("../samples/slim-little.yaml"), List.of("reference=inv-a")).order();

    Finding finding = MadeDraft.defect(new IllegalStateException("for inv-a"), order);

    assertThat(finding.severity()).isEqualTo(Finding.Severity.REFUSAL);
    assertThat(finding.text())
        .startsWith(
            "A defect of the program stopped this design" + " (java.lang.IllegalStateException:");
    Path file = Path.of(finding.text().replaceAll(".*please report it with (.*)\\.", "$1"));
    assertThat(Files.readString(file))
        .contains("at org.midlateral.viewer.scene.MadeDraftTest.", "# Command: midlateral view\n")
        .contains("circumference:\n  proximal-phalanx:")
        .doesNotContain("inv-a");
    Files.delete(file);
  }
}
