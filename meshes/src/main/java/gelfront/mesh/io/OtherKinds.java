// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Files of other kinds that people hand over, told by how they begin. */
final class OtherKinds {
  private static final String EXPORT = ": save the part as STL or 3MF where it was drawn";

  private static final String[][] KINDS = {
    {"ISO-10303-21", "a STEP drawing" + EXPORT},
    {"\u0089PNG", "a picture" + EXPORT},
    {"\u00ff\u00d8\u00ff", "a picture" + EXPORT},
    {"%PDF", "a PDF page" + EXPORT},
    {"<!DOCTYPE html", "a web page: was the download refused?"},
    {"<html", "a web page: was the download refused?"},
    {"glTF", "a glTF scene" + EXPORT},
    {"\u001f\u008b", "packed: unpack it first"},
    {"7z\u00bc\u00af", "packed: unpack it first"},
    {"Rar!", "packed: unpack it first"}
  };

  private OtherKinds() {}

  /** In words; empty where it may be a mesh. */
  static Optional<String> of(byte[] content) {
    for (String[] kind : KINDS) {
      byte[] head = kind[0].getBytes(StandardCharsets.ISO_8859_1);
      if (begins(content, head)) {
        return Optional.of("no mesh, but " + kind[1]);
      }
    }
    return Optional.empty();
  }

  private static boolean begins(byte[] content, byte[] head) {
    boolean same = content.length >= head.length;
    for (int i = 0; same && i < head.length; i++) {
      same = content[i] == head[i];
    }
    return same;
  }
}
