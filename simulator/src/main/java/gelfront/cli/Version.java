package gelfront.cli;

import picocli.CommandLine.IVersionProvider;

/** The version in the jar's manifest; "development" where there is no jar. */
final class Version implements IVersionProvider {
  static String text() {
    String v = Version.class.getPackage().getImplementationVersion();
    return v == null ? "development" : v;
  }

  @Override
  public String[] getVersion() {
    return new String[] {"gelfront " + text()};
  }
}
