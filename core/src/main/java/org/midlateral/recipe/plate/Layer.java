package org.midlateral.recipe.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One layer of parts: a bed, or a slice of a powder's volume. Parts are put where they reach least
 * far back, and of such places the leftmost: the bottom-left rule of Baker, Coffman and Rivest
 * (Orthogonal packings in two dimensions, 1980, from memory), on the cells of footprints.
 */
final class Layer {
  private final int width;
  private final int depth;
  private final int room;
  private final double base;
  private final double height;
  private final long[][] taken;
  private final List<LaidPart> parts = new ArrayList<>();

  /**
   * An empty layer.
   *
   * @param width of the room between the margins (cells)
   * @param depth of it (cells)
   * @param room between two parts (cells)
   * @param base over the bed (mm)
   * @param height of the highest part that it takes (mm)
   */
  Layer(int width, int depth, int room, double base, double height) {
    this.width = width;
    this.depth = depth;
    this.room = room;
    this.base = base;
    this.height = height;
    this.taken = new long[depth][(width + 63) / 64];
  }

  double base() {
    return base;
  }

  double height() {
    return height;
  }

  List<LaidPart> parts() {
    return List.copyOf(parts);
  }

  /** Cells that a footprint keeps from being taken, its room round it included. */
  private record Spot(TurnedPart part, int x, int y) {
    int back() {
      return y + part.footprint().height();
    }
  }

  /**
   * Lays a part, turned as it reaches least far back.
   *
   * @param ways the part in each way it may be turned
   * @return whether it found room
   */
  boolean lay(List<TurnedPart> ways) {
    Optional<Spot> best = Optional.empty();
    for (TurnedPart way : ways) {
      int most = best.map(Spot::back).orElse(depth);
      Optional<Spot> spot = spot(way, most);
      if (spot.isPresent() && (best.isEmpty() || spot.get().back() < best.get().back())) {
        best = spot;
      }
    }
    best.ifPresent(this::take);
    return best.isPresent();
  }

  private Optional<Spot> spot(TurnedPart way, int most) {
    Footprint print = way.footprint();
    for (int y = 0; y + print.height() <= most; y++) {
      for (int x = 0; x + print.width() <= width; x++) {
        if (isFree(print, x, y)) {
          return Optional.of(new Spot(way, x, y));
        }
      }
    }
    return Optional.empty();
  }

  private boolean isFree(Footprint print, int x, int y) {
    int word = x >> 6;
    int shift = x & 63;
    for (int r = 0; r < print.height(); r++) {
      long[] row = print.row(r);
      long[] full = taken[y + r];
      for (int i = 0; i < row.length; i++) {
        // A footprint's last words may reach beyond the row's, where none of its cells are.
        long there = word + i < full.length ? full[word + i] >>> shift : 0;
        if (shift > 0 && word + i + 1 < full.length) {
          there |= full[word + i + 1] << (64 - shift);
        }
        if ((there & row[i]) != 0) {
          return false;
        }
      }
    }
    return true;
  }

  private void take(Spot spot) {
    Footprint grown = spot.part.footprint().grown(room);
    for (int r = 0; r < grown.height(); r++) {
      int y = spot.y - room + r;
      if (y >= 0 && y < depth) {
        take(grown.row(r), grown.width(), spot.x - room, taken[y]);
      }
    }
    parts.add(new LaidPart(spot.part, spot.x, spot.y, base));
  }

  private void take(long[] row, int cells, int at, long[] full) {
    for (int i = 0; i < cells; i++) {
      int x = at + i;
      if (x >= 0 && x < width && (row[i >> 6] & 1L << i) != 0) {
        full[x >> 6] |= 1L << x;
      }
    }
  }
}
