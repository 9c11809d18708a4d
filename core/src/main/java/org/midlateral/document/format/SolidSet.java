package org.midlateral.document.format;

import java.util.List;

/**
 * The parts of one product, with what a file that holds them all says about them.
 *
 * @param title of the whole, free text
 * @param application name and version of the program that made it
 * @param material generic name of what it is printed in
 * @param parts in order along the bed
 * @param placed whether each part's pose is its place on the bed, instead of its turn alone
 */
public record SolidSet(
    String title, String application, String material, List<NamedSolid> parts, boolean placed) {
  /** Parts that are to be laid side by side. */
  public SolidSet(String title, String application, String material, List<NamedSolid> parts) {
    this(title, application, material, parts, false);
  }

  public SolidSet {
    parts = List.copyOf(parts);
  }
}
