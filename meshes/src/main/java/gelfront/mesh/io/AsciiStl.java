package gelfront.mesh.io;

import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import java.nio.charset.StandardCharsets;

/**
 * STL as text: {@code solid, facet normal, outer loop, vertex x y z} thrice, {@code endloop,
 * endfacet, endsolid}; any case, any white space, several solids in one file.
 */
final class AsciiStl implements MeshReader {
  @Override
  public boolean claims(byte[] content) {
    return looksLikeText(content) && new Words(content).startsWith("solid");
  }

  /** No zero bytes and hardly any control characters near the start. */
  static boolean looksLikeText(byte[] content) {
    int odd = 0;
    int n = Math.min(content.length, 1024);
    for (int i = 0; i < n; i++) {
      if (content[i] == 0) {
        return false;
      }
      odd += content[i] > 0 && content[i] < 32 && !Character.isWhitespace(content[i]) ? 1 : 0;
    }
    return n > 0 && odd == 0;
  }

  @Override
  public TriangleMesh read(byte[] content, double metres) {
    Words words = new Words(content);
    MeshAssembler mesh = new MeshAssembler(metres, content.length / 250);
    boolean open = false;
    String w = words.next();
    while (w != null) {
      switch (w) {
        case "solid" -> {
          words.skipLine();
          open = true;
        }
        case "facet" -> facet(words, mesh);
        case "endsolid" -> {
          words.skipLine();
          open = false;
        }
        default -> throw words.error("expected facet or endsolid, found \"" + w + "\"");
      }
      w = words.next();
    }
    if (open) {
      throw words.error("the file is cut short: no endsolid");
    }
    if (mesh.triangleCount() == 0) {
      throw new MeshException("no triangles in it");
    }
    return mesh.mesh();
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

  /** Words of a text, lower case, with the line they stand in. */
  private static final class Words {
    private final byte[] text;
    private int at;
    private int line = 1;

    Words(byte[] text) {
      this.text = text;
    }

    boolean startsWith(String word) {
      return word.equals(next());
    }

    /** The next word, null at the end. */
    String next() {
      skipSpace();
      int from = at;
      while (at < text.length && text[at] > ' ') {
        at++;
      }
      return at == from && at == text.length
          ? null
          : new String(text, from, at - from, StandardCharsets.ISO_8859_1)
              .toLowerCase(java.util.Locale.ROOT);
    }

    private void skipSpace() {
      while (at < text.length && text[at] >= 0 && text[at] <= ' ') {
        line += text[at] == '\n' ? 1 : 0;
        at++;
      }
    }

    void skipWord() {
      if (next() == null) {
        throw cut();
      }
    }

    void skipLine() {
      while (at < text.length && text[at] != '\n' && text[at] != '\r') {
        at++;
      }
    }

    void expect(String word) {
      String w = next();
      if (w == null) {
        throw cut();
      }
      if (!w.equals(word)) {
        throw error("expected " + word + ", found \"" + w + "\"");
      }
    }

    double number() {
      String w = next();
      if (w == null) {
        throw cut();
      }
      double d;
      try {
        d = Double.parseDouble(w);
      } catch (NumberFormatException e) {
        throw error("not a number: \"" + w + "\"");
      }
      if (!Double.isFinite(d)) {
        throw error("a coordinate is " + w);
      }
      return d;
    }

    private MeshException cut() {
      return error("the file is cut short");
    }

    MeshException error(String what) {
      return new MeshException("line " + line + ": " + what);
    }
  }
}
