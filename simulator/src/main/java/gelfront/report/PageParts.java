// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/** The page's own style and script: read from the program, named in the page's policy by hash. */
final class PageParts {
  private PageParts() {}

  /**
   * A text resource beside this class. Its lines end as a browser sees them, however they were
   * checked out: else the browser's hash would be another.
   */
  static String text(String name) {
    try (InputStream in = PageParts.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** As a Content-Security-Policy names what stands inside a style or script element. */
  static String hash(String content) {
    try {
      byte[] d =
          MessageDigest.getInstance("SHA-256").digest(content.getBytes(StandardCharsets.UTF_8));
      return "'sha256-" + Base64.getEncoder().encodeToString(d) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
