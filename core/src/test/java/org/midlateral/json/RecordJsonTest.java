package org.midlateral.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Against the object mapper of Jackson databind, a general-purpose reference library. */
class RecordJsonTest {
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private record Whole(
      String name,
      Double missing,
      double share,
      int count,
      boolean ok,
      RecordJson word,
      List<Part> parts,
      Map<String, List<Double>> numbers,
      Map<String, String> none) {}

  @JsonInclude(JsonInclude.Include.NON_NULL)
  private record Part(String text, @JsonProperty("EI") double bending, String missing)
      implements ReportPart {
    @Override
    public String jsonName(String component) {
      return component.equals("bending") ? "EI" : component;
    }
  }

  private static Whole whole() {
    Map<String, List<Double>> numbers = new LinkedHashMap<>();
    numbers.put("z", List.of(1.0, -0.1, 1e-9, 1e9));
    numbers.put("a", List.of());
    List<Part> parts =
        List.of(new Part("\"ä\\ \n", 1.5, null), new Part(null, -2, "there \u2028 <&>"));
    return new Whole("x", null, 1 / 3.0, 7, true, RecordJson.EXACT, parts, numbers, Map.of());
  }

  @Test
  void writesWhatTheMapperWrites() throws JsonProcessingException {
    assertThat(RecordJson.EXACT.text(whole())).isEqualTo(MAPPER.writeValueAsString(whole()) + "\n");
  }

  @Test
  void roundsToSixDecimalsWithoutTails() {
    record Numbers(
        double third, double tiny, double whole, double large, Double none, double not) {}
    assertThat(
            RecordJson.ROUNDED.text(new Numbers(-1 / 3.0, -4e-7, 2, 12345678.5, null, Double.NaN)))
        .isEqualToIgnoringWhitespace(
            """
            {"third": -0.333333, "tiny": 0, "whole": 2, "large": 12345678.5, "none": null, "not": null}
            """);
  }

  @Test
  void refusesWhatIsNoJson() {
    record Odd(Thread thread) {}
    assertThatThrownBy(() -> RecordJson.EXACT.text(new Odd(Thread.currentThread())))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("Thread");
  }
}
