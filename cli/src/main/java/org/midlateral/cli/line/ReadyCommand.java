package org.midlateral.cli.line;

import java.io.IOException;
import java.util.List;
import org.midlateral.measurement.Order;

/** A command whose words have been read. */
public interface ReadyCommand {
  /** Does what was asked; gives the exit status. */
  int call() throws IOException;

  /** The orders that it has read so far. */
  default List<Order> orders() {
    return List.of();
  }
}
