package org.midlateral.viewer;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** How the program starts, or says why it cannot, in a process of its own. */
class StartTest {
  @Test
  void withoutADisplayItSaysSo() throws Exception {
    ProcessResult result = ProcessResult.viewer(builder -> builder.environment().remove("DISPLAY"));
    assertThat(result.status()).isEqualTo(4);
    assertThat(result.output().strip())
        .isEqualTo("midlateral: the viewer needs a display, and there is none here");
  }

  @Test
  void onADisplayThatIsGoneItSaysSo() throws Exception {
    ProcessResult result =
        ProcessResult.viewer(builder -> builder.environment().put("DISPLAY", ":987"));
    assertThat(result.status()).isEqualTo(4);
    assertThat(result.output())
        .contains("midlateral: the viewer needs a display, and this one cannot")
        .doesNotContain("\tat ");
  }

  @Test
  void twoFilesAreOneTooMany() throws Exception {
    ProcessResult result = ProcessResult.viewer(builder -> {}, "a.yaml", "b.yaml");
    assertThat(result.status()).isEqualTo(2);
  }
}
