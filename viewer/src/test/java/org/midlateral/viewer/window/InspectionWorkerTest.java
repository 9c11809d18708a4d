package org.midlateral.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.OrderText;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.Orthosis;
import org.midlateral.viewer.draft.DraftText;
import org.midlateral.viewer.scene.MadeDraft;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.window.InspectionWorker.Inspected;
import org.midlateral.viewer.window.MakingWorker.MadeAnswer;

/** A shell that is drawn and found wanting on inspection is shown no more; the trough stays. */
class InspectionWorkerTest {
  private MadeDraft drawn;

  private static Order order(String... more) {
    return Orders.read(Path.of("../samples/slim-little.yaml"), List.of(more)).order();
  }

  /** With the shell of another order, that lies nearer to the trough than this one asks for. */
  @BeforeEach
  void draw() throws Exception {
    Order asked = order("print.edge-length=1.2 mm");
    Orthosis own = Orthosis.make(asked);
    Orthosis near = Orthosis.make(order("print.edge-length=1.2 mm", "dorsal-shell.fit-gap=0.15"));
    drawn =
        MadeDraft.of(DraftText.read(OrderText.write(asked)))
            .showing(
                new Orthosis(
                    asked,
                    own.digit(),
                    own.relief(),
                    own.bare(),
                    own.plainTrough(),
                    near.plainShell(),
                    own.trough(),
                    near.dorsalShell(),
                    Optional.empty()));
  }

  @Test
  void theTroughIsShownWithoutItsShell() {
    assertThat(drawn.shapes().orElseThrow().pieces()).hasSize(2);

    Inspected answer = InspectionWorker.inspect(drawn);

    assertThat(answer.shellDropped()).isTrue();
    assertThat(answer.made().shapes().orElseThrow().pieces()).hasSize(1);
    assertThat(answer.findings().get(0).code()).isEqualTo("fit-gap");
    assertThat(answer.findings().get(0).text())
        .startsWith("The dorsal shell is missing")
        .contains("Tried, and works: ");
    assertThat(answer.findings().stream().skip(1))
        .noneMatch(finding -> finding.severity() == Finding.Severity.REFUSAL);
  }

  /** Another colour, or a step back, must not bring the shell back. */
  @Test
  void whatIsShownIsColouredAndNotMadeAnew() throws Exception {
    CompletableFuture<MadeAnswer> coloured = new CompletableFuture<>();
    try (MakingWorker making = new MakingWorker(coloured::complete)) {
      making.ask(drawn.draft(), drawn, Optional.empty(), Quantity.CLEARANCE, Optional.empty());
      MadeAnswer answer = coloured.get(60, TimeUnit.SECONDS);

      assertThat(answer.made()).isSameAs(drawn);
      assertThat(answer.colouring().values()).hasSize(2);
    }
  }
}
