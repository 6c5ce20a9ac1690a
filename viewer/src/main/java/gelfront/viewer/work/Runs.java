// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.result.Provenance;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;

/** Where and when the window's runs are made. */
public final class Runs {
  private Runs() {}

  static Provenance provenance() {
    String host =
        System.getProperty("os.name")
            + " "
            + System.getProperty("os.arch")
            + ", Java "
            + System.getProperty("java.version");
    String now =
        OffsetDateTime.now(ZoneId.systemDefault()).truncatedTo(ChronoUnit.SECONDS).toString();
    return new Provenance(version(), now, host, 0);
  }

  /** The program's. */
  public static String version() {
    String v = Runs.class.getPackage().getImplementationVersion();
    return v == null ? "unpackaged" : v;
  }
}
