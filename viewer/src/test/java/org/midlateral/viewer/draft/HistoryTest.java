package org.midlateral.viewer.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class HistoryTest {
  private final History history = new History(new Draft(Map.of("a", "1", "b", "1")));

  private void type(String path, String text) {
    history.change(history.current().with(path, text), path);
  }

  @Test
  void typingOnInOneFieldIsOneStep() {
    type("a", "6");
    type("a", "65");
    type("b", "2");
    history.undo();
    assertThat(history.current().values()).containsEntry("a", "65").containsEntry("b", "1");
    history.undo();
    assertThat(history.current().get("a")).isEqualTo("1");
    assertThat(history.canUndo()).isFalse();
    history.redo();
    history.redo();
    assertThat(history.current().values()).containsEntry("a", "65").containsEntry("b", "2");
    assertThat(history.canRedo()).isFalse();
  }

  @Test
  void leavingTheFieldEndsTheStep() {
    type("a", "6");
    history.settle("a");
    type("a", "65");
    history.undo();
    assertThat(history.current().get("a")).isEqualTo("6");
  }

  @Test
  void leavingOneFieldDoesNotCutWhatGoesOnAtAnother() {
    type("b", "2");
    history.settle("a");
    type("b", "23");
    history.undo();
    assertThat(history.current().get("b")).isEqualTo("1");
  }

  @Test
  void aNewChangeAfterUndoForgetsTheOtherWay() {
    type("a", "6");
    history.undo();
    type("b", "9");
    assertThat(history.canRedo()).isFalse();
    assertThat(history.current().get("a")).isEqualTo("1");
  }
}
