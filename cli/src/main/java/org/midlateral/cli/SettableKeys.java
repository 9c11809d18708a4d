package org.midlateral.cli;

import java.util.Iterator;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;

/** What may follow {@code --set}, for the shell's completion; read when that is asked for. */
final class SettableKeys implements Iterable<String> {
  @Override
  public Iterator<String> iterator() {
    return KeyTable.standard().keys().stream()
        .filter(key -> !key.isOfItem())
        .map(InputKey::path)
        .map(path -> path + "=")
        .iterator();
  }
}
