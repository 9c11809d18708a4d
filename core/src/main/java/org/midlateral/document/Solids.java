package org.midlateral.document;

import java.util.List;

/**
 * The parts of one product, with what a file that holds them all says about them.
 *
 * @param title of the whole, free text
 * @param application name and version of the program that made it
 * @param material generic name of what it is printed in
 * @param parts in order along the bed
 */
public record Solids(String title, String application, String material, List<Part> parts) {
  public Solids {
    parts = List.copyOf(parts);
  }
}
