package org.midlateral.recipe.batch;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** Where orders come from, one after the other. */
public interface OrderSource extends AutoCloseable {
  /** The next order, or nothing where there is none. */
  Optional<RawOrder> next() throws IOException;

  /** What a person should know of the source beforehand; a sentence each. */
  List<String> notes();

  /**
   * Sees to it, at the end, that nobody changed the source while it was read.
   *
   * @throws SourceProblem if somebody did
   */
  void requireUnchanged() throws IOException, SourceProblem;

  @Override
  void close() throws IOException;
}
