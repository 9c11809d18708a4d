package org.midlateral.document.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

class BenchBlocksTest {

  @Test
  void theReportNamesItsFieldsAsScriptsExpect() throws Exception {
    BenchDocuments documents = BenchFiles.of(BenchFiles.orthosis("middle-inches"));
    JsonNode json = new ObjectMapper().valueToTree(BenchBlocks.of(documents));
    assertThat(json.at("/closure/kind").asText()).isEqualTo("strap");
    assertThat(json.at("/closure/wrapLength").asDouble()).isPositive();
    assertThat(json.at("/closure/sleeve")).hasSize(4);
    assertThat(json.at("/closure/sleeve/1/level").asText()).isEqualTo("pip");
    assertThat(json.at("/closure/straps")).hasSize(2);
    assertThat(json.at("/blank/length").asDouble()).isGreaterThan(100);
    assertThat(json.at("/blank/width").asDouble()).isGreaterThan(68 + 25);
    assertThat(json.at("/blank/thickness").asDouble()).isEqualTo(25.4 / 16);
  }
}
