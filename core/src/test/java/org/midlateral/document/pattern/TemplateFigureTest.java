package org.midlateral.document.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.document.bench.BenchFiles;
import org.midlateral.document.drawing.Mark.LineStroke;
import org.midlateral.document.drawing.Mark.TextLabel;
import org.midlateral.document.drawing.Pen;
import org.midlateral.recipe.Orthosis;

/** The one line that is cut is the blank's: the template only shows what comes of it. */
class TemplateFigureTest {

  @ParameterizedTest
  @ValueSource(strings = {"bulbous-ring", "middle-inches", "slim-little", "covered-tip"})
  void aTemplateThatTheSheetMustStretchToIsNotCut(String sample) throws Exception {
    Orthosis made = BenchFiles.orthosis(sample, "making=hand");
    FlatPattern pattern = FlatPattern.of(made.order(), made.solids());
    assertThat(pattern.template().unrolled().bends()).isFalse();
    List<PatternDrawing.Figure> figures =
        new PatternDrawing(pattern, made.order(), made.digit(), List.of()).figures();

    assertThat(pens(figures.get(0))).contains(Pen.CUT);
    assertThat(pens(figures.get(1))).contains(Pen.EDGE).doesNotContain(Pen.CUT);
    assertThat(figures.get(1).drawing().marks())
        .filteredOn(TextLabel.class::isInstance)
        .extracting(mark -> ((TextLabel) mark).text())
        .contains("Do not cut the sheet to this line:");
    assertThat(figures.get(1).notes().get(0))
        .containsPattern("cut the blank, not this line|Use the blank, not the template");
  }

  private static List<Pen> pens(PatternDrawing.Figure figure) {
    return figure.drawing().marks().stream()
        .filter(mark -> mark instanceof LineStroke line && line.closed())
        .map(mark -> ((LineStroke) mark).pen())
        .toList();
  }
}
