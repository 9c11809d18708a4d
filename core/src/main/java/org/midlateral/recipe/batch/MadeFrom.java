package org.midlateral.recipe.batch;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.midlateral.document.Digest;
import org.midlateral.recipe.batch.Outcome.OrderState;
import org.midlateral.recipe.product.ProductReport;
import org.midlateral.shared.SharedData;

/**
 * The record beside an order's files of what they were made from.
 *
 * @param tool name, version and build of the program
 * @param input SHA-256 of what the order said, overrides and formats included
 * @param state what came of it: made, partly or refused
 * @param text why it was refused, or its cautions
 * @param files size of each file by name (bytes)
 */
record MadeFrom(String tool, String input, OrderState state, String text, Map<String, Long> files) {
  /** Name of the record's own file. */
  static final String FILE = "made-from.json";

  private static final long LARGEST = 1 << 16;
  private static final ObjectMapper JSON =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  MadeFrom {
    Objects.requireNonNull(tool);
    Objects.requireNonNull(input);
    Objects.requireNonNull(state);
    Objects.requireNonNull(text);
    files = Collections.unmodifiableMap(new TreeMap<>(files));
  }

  /** The record in a folder, if it is whole and all its files stand there in their size. */
  static Optional<MadeFrom> in(Path folder) {
    Path file = folder.resolve(FILE);
    try {
      if (!Files.exists(file) || Files.size(file) > LARGEST) {
        return Optional.empty();
      }
      MadeFrom read = JSON.readValue(file.toFile(), MadeFrom.class);
      if (read == null) {
        return Optional.empty();
      }
      for (Map.Entry<String, Long> entry : read.files.entrySet()) {
        Long size = Files.size(folder.resolve(entry.getKey()));
        if (!size.equals(entry.getValue())) {
          return Optional.empty();
        }
      }
      return Optional.of(read);
    } catch (IOException | InvalidPathException e) {
      // Damaged, or a file is missing: the order is made again.
      return Optional.empty();
    }
  }

  /** This program, as the record names it: with its build, which may change what it makes. */
  static String program() {
    return ProductReport.tool() + "+" + SharedData.build();
  }

  /** Whether it speaks of the same program and the same input. */
  boolean isOf(String otherTool, String otherInput) {
    return otherTool.equals(tool) && otherInput.equals(input);
  }

  String json() {
    try {
      return JSON.writeValueAsString(this) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a record that is no JSON", e);
    }
  }

  /** What identifies an order's input. */
  static String digest(String order, List<String> overrides, List<String> formats) {
    String all = order + "\u0000" + overrides + "\u0000" + formats;
    return Digest.of(all.getBytes(StandardCharsets.UTF_8));
  }
}
