// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import gelfront.mesh.MeshException;
import gelfront.mesh.io.Model3mf.Shape;
import gelfront.mesh.io.Model3mf.Use;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;

/**
 * 3MF (3MF Consortium, 3MF Core Specification 1.3; components in other parts by the Production
 * Extension 1.1): all items of the build, with their transforms and components, as one mesh in the
 * file's own unit. Objects of type support, solidsupport, surface and other are left out and told.
 */
final class ThreeMf implements MeshReader {
  private static final String RELATIONS = "/_rels/.rels";
  private static final String USUAL = "/3D/3dmodel.model";
  private static final String MODEL = "/3dmanufacturing/2013/01/3dmodel";

  /** Objects in objects in objects. */
  private static final int DEEPEST = 32;

  /** Uses of objects, all counted: small files can unfold to huge ones. */
  private static final int MOST_USES = 100_000;

  /** Model parts of a package. */
  private static final int MOST_PARTS = 1000;

  @Override
  public boolean claims(byte[] c) {
    return c.length > 4 && c[0] == 'P' && c[1] == 'K' && c[2] == 3 && c[3] == 4;
  }

  @Override
  public RawMesh read(byte[] content, Optional<LengthUnit> stated) {
    return new Reading(new Package3mf(content)).mesh(stated);
  }

  /** One file's reading. */
  private static final class Reading {
    private final Package3mf archive;
    private final Map<String, Model3mf> parts = new HashMap<>();
    private final Deque<String> inside = new ArrayDeque<>();
    private final List<String> notes = new ArrayList<>();
    private int uses;
    private int leftOut;

    Reading(Package3mf archive) {
      this.archive = archive;
    }

    RawMesh mesh(Optional<LengthUnit> stated) {
      String root = root();
      Model3mf model = part(root);
      model.checkBuild();
      MeshAssembler mesh = new MeshAssembler(metres(model, stated), 1000);
      for (Use item : model.build()) {
        add(root, item, Transform.NONE, mesh);
      }
      if (leftOut > 0) {
        notes.add(leftOut + " objects that are support, surface or other were left out");
      }
      if (mesh.triangleCount() == 0) {
        throw new MeshException("no triangles in what it says is to be made");
      }
      return new RawMesh(mesh.mesh(), model.unit(), notes);
    }

    private String root() {
      List<String> found = new ArrayList<>();
      Boolean there = archive.read(RELATIONS, in -> relations(in, found));
      if (there != null && !found.isEmpty()) {
        return found.get(0);
      }
      if (archive.read(USUAL, in -> true) == null) {
        throw new MeshException("a zip archive, but no 3MF file: it names no 3-D model");
      }
      notes.add("the archive doesn't say which part is the model: " + USUAL + " was taken");
      return USUAL;
    }

    private static boolean relations(InputStream in, List<String> found) throws XMLStreamException {
      Xml.walk(
          in,
          (name, at) -> {
            String type = Xml.text(at, "Type");
            String target = Xml.text(at, "Target");
            if (name.equals("Relationship")
                && type != null
                && type.endsWith(MODEL)
                && target != null) {
              if ("External".equals(Xml.text(at, "TargetMode"))) {
                throw new MeshException("its model lies outside the file: refused");
              }
              found.add(target);
            }
          },
          (name, at) -> {});
      return true;
    }

    private Model3mf part(String name) {
      Model3mf known = parts.get(name);
      if (known != null) {
        return known;
      }
      if (parts.size() >= MOST_PARTS) {
        throw new MeshException("more than " + MOST_PARTS + " parts with models");
      }
      Model3mf model = archive.read(name, Model3mf::of);
      if (model == null) {
        throw new MeshException("the archive has no part " + Words.quoted(name));
      }
      parts.put(name, model);
      return model;
    }

    /** The file's own unit; what the user says must not contradict it. */
    private static double metres(Model3mf model, Optional<LengthUnit> stated) {
      Optional<LengthUnit> own = model.unit();
      if (own.isPresent() && stated.isPresent() && !own.equals(stated)) {
        throw new MeshException(
            "the file itself states its unit, "
                + own.get().word()
                + ", and it is not "
                + stated.get().word()
                + ": leave the stated unit out, or correct the file");
      }
      return MeshReader.metres(own.or(() -> stated));
    }

    private void add(String from, Use use, Transform outer, MeshAssembler mesh) {
      String part = use.part().isEmpty() ? from : use.part();
      String key = part + "#" + use.object();
      Shape shape = part(part).shape(use.object());
      if (shape == null) {
        throw new MeshException("there is no object number " + Words.quoted(use.object()));
      }
      if (inside.contains(key)) {
        throw new MeshException("object " + Words.quoted(use.object()) + " is part of itself");
      }
      if (inside.size() >= DEEPEST || ++uses > MOST_USES) {
        throw new MeshException(
            "objects nest more than "
                + DEEPEST
                + " deep or are used more than "
                + MOST_USES
                + " times: refused");
      }
      if (!shape.type.equals("model")) {
        leftOut++;
        return;
      }
      Transform t = use.transform().then(outer);
      give(shape, t, mesh);
      inside.push(key);
      for (Use inner : shape.uses) {
        add(part, inner, t, mesh);
      }
      inside.pop();
    }

    /** Mirrored objects are turned inside out again. */
    private void give(Shape s, Transform t, MeshAssembler mesh) {
      boolean mirrored = t.determinant() < 0;
      for (int i = 0; i < s.cornerCount; i += 3) {
        for (int c = 0; c < 3; c++) {
          int v = 3 * s.corners[i + (mirrored ? 2 - c : c)];
          double x = s.vertices[v];
          double y = s.vertices[v + 1];
          double z = s.vertices[v + 2];
          mesh.corner(t.along(0, x, y, z), t.along(1, x, y, z), t.along(2, x, y, z));
        }
      }
    }
  }
}
