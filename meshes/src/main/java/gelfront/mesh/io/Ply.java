// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import gelfront.mesh.MeshException;
import gelfront.mesh.io.PlyHeader.Element;
import gelfront.mesh.io.PlyHeader.Property;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * PLY 1.0, text or binary in either byte order (G. Turk, The PLY Polygon File Format, 1994):
 * element {@code vertex} with x, y, z and element {@code face} with a list {@code vertex_indices}
 * or {@code vertex_index}, counted from 0. Other elements and properties are passed over.
 */
final class Ply implements MeshReader {
  @Override
  public boolean claims(byte[] content) {
    return PlyHeader.begins(content);
  }

  @Override
  public RawMesh read(byte[] content, Optional<LengthUnit> stated) {
    PlyHeader head = PlyHeader.of(content);
    boolean text = head.format().equals("ascii");
    PlyValues values = text ? text(content, head) : bytes(content, head);
    Corners corners = null;
    MeshAssembler mesh = null;
    for (Element e : head.elements()) {
      checkRoom(e, values, text);
      if (e.name().equals("vertex")) {
        corners = vertices(e, values);
      } else if (e.name().equals("face")) {
        mesh = faces(e, values, corners, MeshReader.metres(stated));
      } else if (e.name().equals("tristrips")) {
        throw new MeshException("holds strips of triangles: save it with single faces");
      } else {
        skip(e, values);
      }
    }
    if (mesh == null || mesh.triangleCount() == 0) {
      throw new MeshException("no faces in it");
    }
    List<String> notes = new ArrayList<>();
    if (values.remaining() > (text ? 2 : 0)) {
      notes.add(values.remaining() + " bytes after the last element were not read");
    }
    return RawMesh.of(mesh.mesh(), notes);
  }

  private static PlyValues text(byte[] content, PlyHeader head) {
    return new PlyValues.Text(new Words(content, head.end()));
  }

  private static PlyValues bytes(byte[] content, PlyHeader head) {
    boolean big = head.format().equals("binary_big_endian");
    ByteBuffer b = ByteBuffer.wrap(content).position(head.end());
    return new PlyValues.Bytes(b.order(big ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN));
  }

  /** Before anything is set aside for them. */
  private static void checkRoom(Element e, PlyValues values, boolean text) {
    long room = values.remaining() + 1; // the last number of a text needs no space behind it
    if (e.count() > 0 && (e.properties().isEmpty() || e.count() > room / e.least(text))) {
      throw new MeshException(
          "the head promises "
              + e.count()
              + " of element "
              + Words.quoted(e.name())
              + ", more than the file holds: it is cut short");
    }
  }

  private static Corners vertices(Element e, PlyValues values) {
    int[] at = {find(e, "x"), find(e, "y"), find(e, "z")};
    Corners corners = new Corners((int) e.count());
    double[] row = new double[e.properties().size()];
    for (long v = 0; v < e.count(); v++) {
      for (int i = 0; i < row.length; i++) {
        Property p = e.properties().get(i);
        row[i] = p.list() ? list(p, values) : values.next(p.type());
      }
      for (int axis : at) {
        if (!Double.isFinite(row[axis])) {
          throw values.error("vertex " + v + ": a coordinate is " + row[axis]);
        }
      }
      corners.add(row[at[0]], row[at[1]], row[at[2]]);
    }
    return corners;
  }

  private static int find(Element e, String name) {
    for (int i = 0; i < e.properties().size(); i++) {
      if (e.properties().get(i).name().equals(name) && !e.properties().get(i).list()) {
        return i;
      }
    }
    throw new MeshException("its vertices have no " + name);
  }

  private static double list(Property p, PlyValues values) {
    double n = values.next(p.counts());
    for (long i = 0; i < n; i++) {
      values.next(p.type());
    }
    return n;
  }

  private static void skip(Element e, PlyValues values) {
    for (long i = 0; i < e.count(); i++) {
      for (Property p : e.properties()) {
        if (p.list()) {
          list(p, values);
        } else {
          values.next(p.type());
        }
      }
    }
  }

  private static MeshAssembler faces(
      Element e, PlyValues values, @Nullable Corners corners, double metres) {
    if (corners == null) {
      throw new MeshException("its faces come before its vertices");
    }
    if (e.properties().stream().noneMatch(Ply::corners)) {
      throw new MeshException("its faces have no list vertex_indices");
    }
    MeshAssembler mesh = new MeshAssembler(metres, (int) e.count());
    for (long f = 0; f < e.count(); f++) {
      for (Property p : e.properties()) {
        if (corners(p)) {
          face(f, p, values, corners, mesh);
        } else if (p.list()) {
          list(p, values);
        } else {
          values.next(p.type());
        }
      }
    }
    return mesh;
  }

  private static boolean corners(Property p) {
    return p.list() && (p.name().equals("vertex_indices") || p.name().equals("vertex_index"));
  }

  private static void face(
      long number, Property p, PlyValues values, Corners corners, MeshAssembler mesh) {
    double n = values.next(p.counts());
    try {
      Corners.checkSize(n == Math.rint(n) ? (long) n : -1);
    } catch (MeshException e) {
      throw values.error("face " + number + ": " + e.getMessage());
    }
    int[] face = new int[(int) n];
    for (int i = 0; i < face.length; i++) {
      double v = values.next(p.type());
      if (!(v >= 0 && v < corners.count() && v == Math.rint(v))) {
        throw values.error("face " + number + " names vertex " + v + " of " + corners.count());
      }
      face[i] = (int) v;
    }
    corners.face(face, face.length, mesh);
  }
}
