package org.midlateral.cli;

import org.midlateral.shared.SharedData;
import picocli.CommandLine.IVersionProvider;

/** The version of the build, as every command gives it. */
final class ProgramVersion implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"midlateral " + SharedData.version() + "+" + SharedData.build()};
  }
}
