// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import gelfront.mesh.MeshException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/** One model part of a 3MF package: its objects, its build and its unit. */
final class Model3mf {
  /** Name spaces whose extensions change no shape that is read here, or are read. */
  private static final Set<String> KNOWN =
      Set.of(
          "http://schemas.microsoft.com/3dmanufacturing/material/2015/02",
          "http://schemas.microsoft.com/3dmanufacturing/production/2015/06",
          "http://schemas.microsoft.com/3dmanufacturing/core/2015/02");

  private static final String PRODUCTION =
      "http://schemas.microsoft.com/3dmanufacturing/production/2015/06";

  private static final Map<String, LengthUnit> UNITS =
      Map.of(
          "micron", LengthUnit.MICRON,
          "millimeter", LengthUnit.MM,
          "centimeter", LengthUnit.CM,
          "inch", LengthUnit.INCH,
          "foot", LengthUnit.FOOT,
          "meter", LengthUnit.M);

  /** Uses of an object in another or in the build. */
  private static final int MOST_USES = 100_000;

  /**
   * An object's use.
   *
   * @param part that it stands in; empty: the part that names it
   */
  record Use(String part, String object, Transform transform) {}

  /** An object: a mesh, or uses of others. */
  static final class Shape {
    final String type;
    final List<Use> uses = new ArrayList<>();
    double[] vertices = new double[0];
    int vertexCount;
    int[] corners = new int[0];
    int cornerCount;

    Shape(String type) {
      this.type = type;
    }

    void vertex(double x, double y, double z) {
      if (3 * vertexCount + 3 > vertices.length) {
        vertices = Arrays.copyOf(vertices, Math.max(24, 2 * vertices.length));
      }
      vertices[3 * vertexCount] = x;
      vertices[3 * vertexCount + 1] = y;
      vertices[3 * vertexCount + 2] = z;
      vertexCount++;
    }

    void corner(int v) {
      if (cornerCount == corners.length) {
        corners = Arrays.copyOf(corners, Math.max(24, 2 * corners.length));
      }
      corners[cornerCount++] = v;
    }
  }

  private final Map<String, Shape> shapes = new HashMap<>();
  private final List<Use> build = new ArrayList<>();
  private @Nullable LengthUnit unit;
  private @Nullable Shape open;

  private Model3mf() {}

  static Model3mf of(InputStream in) throws XMLStreamException {
    Model3mf model = new Model3mf();
    Xml.walk(in, model::start, model::end);
    return model;
  }

  /** The unit that the part names. */
  Optional<LengthUnit> unit() {
    return Optional.ofNullable(unit);
  }

  @Nullable Shape shape(String id) {
    return shapes.get(id);
  }

  List<Use> build() {
    return build;
  }

  private void start(String name, XMLStreamReader at) {
    switch (name) {
      case "model" -> model(at);
      case "object" -> {
        String type = Xml.text(at, "type");
        open = new Shape(type == null ? "model" : type);
        if (shapes.put(String.valueOf(Xml.text(at, "id")), open) != null) {
          throw Xml.error(at, "two objects have the number " + id(at, "id"));
        }
      }
      case "vertex" -> {
        if (open != null) {
          open.vertex(Xml.number(at, "x"), Xml.number(at, "y"), Xml.number(at, "z"));
        }
      }
      case "triangle" -> {
        if (open != null) {
          open.corner(Xml.index(at, "v1", open.vertexCount));
          open.corner(Xml.index(at, "v2", open.vertexCount));
          open.corner(Xml.index(at, "v3", open.vertexCount));
        }
      }
      case "component" -> use(at, open == null ? build : open.uses);
      case "item" -> use(at, build);
      case "beamlattice", "booleans", "levelset", "slicestack" ->
          throw Xml.error(at, "holds a " + name + ", which gelfront doesn't read");
      default -> {}
    }
  }

  private void end(String name, XMLStreamReader at) {
    if (name.equals("object")) {
      open = null;
    }
  }

  private void model(XMLStreamReader at) {
    String u = Xml.text(at, "unit");
    unit = u == null ? null : UNITS.get(u);
    if (u != null && unit == null) {
      throw Xml.error(at, "no unit of a 3MF file: " + Words.quoted(u));
    }
    String needs = Xml.text(at, "requiredextensions");
    for (String prefix : needs == null ? new String[0] : needs.strip().split("\\s+", -1)) {
      String space = prefix.isEmpty() ? null : at.getNamespaceURI(prefix);
      if (!prefix.isEmpty() && (space == null || !KNOWN.contains(space))) {
        throw Xml.error(
            at,
            "needs the 3MF extension "
                + Words.quoted(space == null ? prefix : space)
                + ", which gelfront doesn't read");
      }
    }
  }

  private static String id(XMLStreamReader at, String name) {
    return Words.quoted(String.valueOf(Xml.text(at, name)));
  }

  private static void use(XMLStreamReader at, List<Use> uses) {
    if (uses.size() >= MOST_USES) {
      throw Xml.error(at, "more than " + MOST_USES + " uses of objects");
    }
    String object = Xml.text(at, "objectid");
    if (object == null) {
      throw Xml.error(at, at.getLocalName() + " has no objectid");
    }
    String part = at.getAttributeValue(PRODUCTION, "path");
    uses.add(new Use(part == null ? "" : part, object, transform(at)));
  }

  private static Transform transform(XMLStreamReader at) {
    String text = Xml.text(at, "transform");
    if (text == null) {
      return Transform.NONE;
    }
    String[] words = text.strip().split("\\s+", -1);
    if (words.length != 12) {
      throw Xml.error(at, "a transform has " + words.length + " numbers, not 12");
    }
    double[] m = new double[12];
    for (int i = 0; i < 12; i++) {
      m[i] = Xml.number(at, words[i], "a number of a transform");
    }
    Transform t = new Transform(m);
    if (t.determinant() == 0 || !t.finite()) {
      throw Xml.error(at, "a transform squeezes the object flat");
    }
    return t;
  }

  /** Throws where nothing is built. */
  void checkBuild() {
    if (build.isEmpty()) {
      throw new MeshException("its build has no item: nothing in it is meant to be made");
    }
  }
}
