// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import gelfront.mesh.MeshException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * OBJ text: {@code v x y z} and {@code f a b c ...}, the numbers counted from 1, or backwards from
 * -1, with texture and normal behind slashes (Wavefront Technologies, Advanced Visualizer manual,
 * appendix B1, Object Files). Materials, textures and normals don't matter here and no other file
 * is ever opened; curved surfaces are refused.
 */
final class Obj implements MeshReader {
  private static final Set<String> IGNORED =
      Set.of(
          "vt",
          "vn",
          "vp",
          "g",
          "o",
          "s",
          "mg",
          "l",
          "p",
          "mtllib",
          "usemtl",
          "maplib",
          "usemap",
          "bevel",
          "c_interp",
          "d_interp",
          "lod",
          "shadow_obj",
          "trace_obj");

  private static final Set<String> CURVED =
      Set.of("cstype", "deg", "bmat", "step", "curv", "curv2", "surf", "parm", "trim", "hole");

  /** Bytes of text that a vertex with its two faces takes, roughly. */
  private static final int VERTEX = 70;

  @Override
  public boolean claims(byte[] content) {
    if (!AsciiStl.looksLikeText(content)) {
      return false;
    }
    Words words = new Words(content);
    String w = words.onLine();
    while ((w == null || w.startsWith("#")) && words.nextLine()) {
      w = words.onLine();
    }
    return w != null && (w.equals("v") || w.equals("f") || IGNORED.contains(w));
  }

  @Override
  public RawMesh read(byte[] content, Optional<LengthUnit> stated) {
    Words words = new Words(content);
    Corners corners = new Corners(content.length / VERTEX);
    MeshAssembler mesh =
        new MeshAssembler(MeshReader.metres(stated), 2 * (content.length / VERTEX));
    do {
      line(words, corners, mesh);
    } while (words.nextLine());
    if (mesh.triangleCount() == 0) {
      throw new MeshException("no faces in it");
    }
    return RawMesh.of(mesh.mesh(), List.of());
  }

  private static void line(Words words, Corners corners, MeshAssembler mesh) {
    String w = words.onLine();
    if (w == null || w.startsWith("#") || IGNORED.contains(w)) {
      return;
    }
    if (w.equals("v")) {
      double x = coordinate(words);
      double y = coordinate(words);
      corners.add(x, y, coordinate(words));
    } else if (w.equals("f") || w.equals("fo")) {
      face(words, corners, mesh);
    } else if (CURVED.contains(w)) {
      throw words.error("holds curved surfaces (" + w + "): save it as triangles");
    } else if (!w.equals("end")) {
      throw words.error("no statement of an OBJ file: " + Words.quoted(w));
    }
  }

  private static double coordinate(Words words) {
    String w = words.onLine();
    if (w == null) {
      throw words.error("a point needs x, y and z");
    }
    return words.number(w);
  }

  private static void face(Words words, Corners corners, MeshAssembler mesh) {
    int[] face = new int[4];
    int n = 0;
    for (String w = words.onLine(); w != null && !w.startsWith("#"); w = words.onLine()) {
      face = n == face.length ? Arrays.copyOf(face, 2 * n) : face;
      face[n++] = number(w, words, corners.count());
      if (n > Corners.MOST) {
        break;
      }
    }
    try {
      Corners.checkSize(n);
    } catch (MeshException e) {
      throw words.error(String.valueOf(e.getMessage()));
    }
    corners.face(face, n, mesh);
  }

  private static int number(String w, Words words, int known) {
    int slash = w.indexOf('/');
    long v;
    try {
      v = Long.parseLong(slash < 0 ? w : w.substring(0, slash));
    } catch (NumberFormatException e) {
      throw words.error("not a number of a point: " + Words.quoted(w));
    }
    long at = v < 0 ? known + v : v - 1;
    if (at < 0 || at >= known) {
      throw words.error("there is no point number " + v + " so far: there are " + known);
    }
    return (int) at;
  }
}
