// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import gelfront.mesh.MeshException;
import java.util.List;
import java.util.Optional;

/**
 * STL as text: {@code solid, facet normal, outer loop, vertex x y z} thrice, {@code endloop,
 * endfacet, endsolid}; any case, any white space and ends of lines, several solids in one file
 * (StereoLithography Interface Specification, 3D Systems, 1988, as quoted in M. Burns, Automated
 * Fabrication, 1993, 6.5).
 */
final class AsciiStl implements MeshReader {
  /** Bytes of text that a triangle takes, roughly. */
  private static final int TRIANGLE = 250;

  @Override
  public boolean claims(byte[] content) {
    return looksLikeText(content) && "solid".equals(new Words(content).next());
  }

  /** No zero bytes and no control characters near the start. */
  static boolean looksLikeText(byte[] content) {
    int n = Math.min(content.length, 1024);
    for (int i = 0; i < n; i++) {
      boolean odd = content[i] >= 0 && content[i] < 32 && !Character.isWhitespace(content[i]);
      boolean atEnd = (content[i] == 0 || content[i] == 26) && padding(content, i);
      if (odd && !atEnd) {
        return false;
      }
    }
    return n > 0;
  }

  private static boolean padding(byte[] content, int from) {
    for (int i = from; i < content.length; i++) {
      if (content[i] != 0 && content[i] != 26) {
        return false;
      }
    }
    return true;
  }

  @Override
  public RawMesh read(byte[] content, Optional<LengthUnit> stated) {
    Words words = new Words(content);
    MeshAssembler mesh = new MeshAssembler(MeshReader.metres(stated), content.length / TRIANGLE);
    boolean open = false;
    String w = words.next();
    while (w != null) {
      switch (w) {
        case "solid" -> {
          skipName(words);
          open = true;
        }
        case "facet" -> facet(words, mesh);
        case "end" -> {
          words.expect("solid");
          words.skipLine();
          open = false;
        }
        case "endsolid" -> {
          words.skipLine();
          open = false;
        }
        default -> throw words.error("expected facet or endsolid, found " + Words.quoted(w));
      }
      w = words.next();
    }
    if (open) {
      throw words.error("the file is cut short: no endsolid");
    }
    if (mesh.triangleCount() == 0) {
      throw new MeshException("no triangles in it");
    }
    return RawMesh.of(mesh.mesh(), List.of());
  }

  /** A solid's name ends with the line, unless all of the file stands in one. */
  private static void skipName(Words words) {
    String last = "";
    int[] before = words.mark();
    int[] here = words.mark();
    String w = words.onLine();
    while (w != null) {
      if (last.equals("facet") && w.equals("normal") && words.onLine() != null) {
        words.back(before);
        return;
      }
      last = w;
      before = here;
      here = words.mark();
      w = words.onLine();
    }
  }

  private static void facet(Words words, MeshAssembler mesh) {
    words.expect("normal");
    for (int i = 0; i < 3; i++) {
      words.skipWord();
    }
    words.expect("outer");
    words.expect("loop");
    for (int i = 0; i < 3; i++) {
      words.expect("vertex");
      double x = words.number();
      double y = words.number();
      mesh.corner(x, y, words.number());
    }
    words.expect("endloop");
    words.expect("endfacet");
  }
}
