package org.midlateral.mechanics.finite;

import org.junit.jupiter.api.Test;

class PublishedCasesTest {
  @Test
  void print() {
    for (PublishedCase c : PublishedCase.all()) {
      StringBuilder line = new StringBuilder(c.name());
      for (int n : c.meshes()) {
        line.append(String.format("  %d: %.4f", n, c.computed().applyAsDouble(n) / c.published()));
      }
      System.out.println(line);
    }
  }
}
