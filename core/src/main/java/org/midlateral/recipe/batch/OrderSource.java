package org.midlateral.recipe.batch;

import java.io.IOException;
import java.util.Optional;

/** Where orders come from, one after the other. */
public interface OrderSource extends AutoCloseable {
  /** The next order, or nothing where there is none. */
  Optional<RawOrder> next() throws IOException;

  @Override
  void close() throws IOException;
}
