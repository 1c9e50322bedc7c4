package closehand.cli;

import picocli.CommandLine;

/** Names the program's version. */
final class Version implements CommandLine.IVersionProvider {
  @Override
  public String[] getVersion() {
    String version = Commands.class.getPackage().getImplementationVersion();
    return new String[] {"Closehand " + (version == null ? "under development" : version)};
  }
}
