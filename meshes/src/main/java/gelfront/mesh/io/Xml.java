// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import gelfront.mesh.MeshException;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.util.function.BiConsumer;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/** XML without document types, entities of its own or anything from outside. */
final class Xml {
  private Xml() {}

  /** Hears of each element's start. */
  interface Start extends BiConsumer<String, XMLStreamReader> {}

  /**
   * Calls {@code start} with the local name at each element, {@code end} with it at its end.
   *
   * @throws MeshException on a document type declaration
   */
  static void walk(InputStream in, Start start, Start end) throws XMLStreamException {
    XMLStreamReader xml = factory().createXMLStreamReader(text(in));
    try {
      while (xml.hasNext()) {
        int event = xml.next();
        if (event == XMLStreamConstants.DTD) {
          throw new MeshException("has a document type declaration, which 3MF forbids: refused");
        }
        if (event == XMLStreamConstants.START_ELEMENT) {
          start.accept(xml.getLocalName(), xml);
        } else if (event == XMLStreamConstants.END_ELEMENT) {
          end.accept(xml.getLocalName(), xml);
        }
      }
    } finally {
      xml.close();
    }
  }

  /**
   * Letters of a part, which are UTF-8 or, with its mark, UTF-16 (Open Packaging Conventions). Left
   * to itself the JDK's reader prints on the console where bytes are no letters.
   */
  private static Reader text(InputStream in) throws XMLStreamException {
    try {
      BufferedInputStream bytes = new BufferedInputStream(in, 1 << 16);
      bytes.mark(3);
      int first = bytes.read();
      int second = bytes.read();
      boolean wide = (first == 0xFE && second == 0xFF) || (first == 0xFF && second == 0xFE);
      boolean marked = first == 0xEF && second == 0xBB && bytes.read() == 0xBF;
      if (!marked) {
        bytes.reset();
      }
      CharsetDecoder letters =
          (wide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8).newDecoder();
      return new InputStreamReader(bytes, letters);
    } catch (IOException e) {
      throw new XMLStreamException(String.valueOf(e.getMessage()), e);
    }
  }

  private static XMLInputFactory factory() {
    XMLInputFactory f = XMLInputFactory.newDefaultFactory();
    f.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    f.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    f.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
    f.setXMLResolver(
        (publicId, systemId, base, namespace) -> {
          throw new XMLStreamException("refers to something outside the file");
        });
    return f;
  }

  static MeshException error(XMLStreamReader at, String what) {
    return new MeshException("line " + at.getLocation().getLineNumber() + ": " + what);
  }

  /** An attribute without name space; null where there is none. */
  static @Nullable String text(XMLStreamReader at, String name) {
    String v = at.getAttributeValue("", name);
    return v == null ? at.getAttributeValue(null, name) : v;
  }

  static double number(XMLStreamReader at, String name) {
    String v = text(at, name);
    if (v == null) {
      throw error(at, at.getLocalName() + " has no " + name);
    }
    return number(at, v.strip(), name);
  }

  static double number(XMLStreamReader at, String v, String name) {
    try {
      double d = Double.parseDouble(v);
      if (Double.isFinite(d)) {
        return d;
      }
    } catch (NumberFormatException e) {
      // told below
    }
    throw error(at, name + " is no number: " + Words.quoted(v));
  }

  static int index(XMLStreamReader at, String name, int known) {
    String v = text(at, name);
    try {
      int i = Integer.parseInt(v == null ? "" : v.strip());
      if (i >= 0 && i < known) {
        return i;
      }
    } catch (NumberFormatException e) {
      // told below
    }
    throw error(
        at,
        "triangle: "
            + name
            + " = "
            + (v == null ? "nothing" : Words.quoted(v))
            + " is none of the "
            + known
            + " vertices before it");
  }
}
