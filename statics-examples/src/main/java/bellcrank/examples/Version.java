package bellcrank.examples;

import picocli.CommandLine.IVersionProvider;

/** The version of the program, which is that of the project. */
final class Version implements IVersionProvider {

  /** Version of the project. */
  static final String NUMBER = "0.1.0-SNAPSHOT";

  @Override
  public String[] getVersion() {
    return new String[] {"bellcrank " + NUMBER};
  }
}
