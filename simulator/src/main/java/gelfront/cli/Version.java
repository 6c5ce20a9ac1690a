// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version, from the jar's manifest. */
final class Version implements IVersionProvider {
  static String number() {
    return Optional.ofNullable(Main.class.getPackage().getImplementationVersion())
        .orElse("unpackaged");
  }

  @Override
  public String[] getVersion() {
    return new String[] {"gelfront " + number()};
  }
}
