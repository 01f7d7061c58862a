package org.bearingline.cli;

import picocli.CommandLine.IVersionProvider;

/** The version written into the jar by the build. */
final class ProgramVersion implements IVersionProvider {

  @Override
  public String[] getVersion() {
    String version = ProgramVersion.class.getPackage().getImplementationVersion();
    return new String[] {"Bearing Line " + (version == null ? "(from sources)" : version)};
  }
}
