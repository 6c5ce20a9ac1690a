// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import gelfront.mesh.MeshException;
import java.io.ByteArrayInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.stream.XMLStreamException;
import org.jspecify.annotations.Nullable;

/**
 * The zip archive round a 3MF model (ECMA-376 part 2, Open Packaging Conventions). Parts are only
 * ever read from the archive in memory, by name; nothing is unpacked to a disk, so no name in it
 * can point anywhere.
 */
final class Package3mf {
  /** Bytes of one part, unpacked; five million triangles take a quarter of it. */
  static final long LARGEST_PART = 2L << 30;

  /** Times that a part may be larger unpacked, from {@link #SMALL} on; models get to 20. */
  static final int MOST_PACKED = 200;

  private static final long SMALL = 16L << 20;

  /** Entries of the archive; the fullest have some hundreds. */
  static final int MOST_ENTRIES = 10_000;

  /** Bytes between an angle bracket and the next. */
  static final int LONGEST_TAG = 64 * 1024;

  private final byte[] content;

  Package3mf(byte[] content) {
    this.content = content;
  }

  /** Reads a part. */
  interface Body<T> {
    T from(InputStream in) throws IOException, XMLStreamException;
  }

  /**
   * @param name with a slash at the head, as in the package
   * @return null where there is no such part
   * @throws MeshException where the archive or the part is damaged or beyond the limits
   */
  <T> @Nullable T read(String name, Body<T> body) {
    String wanted = name.startsWith("/") ? name.substring(1) : name;
    try (ZipInputStream zip = open()) {
      ZipEntry entry = zip.getNextEntry();
      for (int n = 0; entry != null; n++) {
        if (n >= MOST_ENTRIES) {
          throw new MeshException("the archive has more than " + MOST_ENTRIES + " entries");
        }
        if (entry.getName().equalsIgnoreCase(wanted)) {
          return whole(zip, body);
        }
        pass(zip);
        entry = zip.getNextEntry();
      }
      return null;
    } catch (XMLStreamException e) {
      throw new MeshException(wanted + ": " + xml(e));
    } catch (IOException | IllegalArgumentException e) {
      throw new MeshException("the archive is damaged: " + e.getMessage());
    }
  }

  private ZipInputStream open() {
    return new ZipInputStream(new ByteArrayInputStream(content), StandardCharsets.UTF_8);
  }

  /** The rest of an entry is read too: only then its checksum is looked at. */
  private <T> T whole(ZipInputStream zip, Body<T> body) throws IOException, XMLStreamException {
    Limited limited = new Limited(zip, content.length, true);
    T out = body.from(limited);
    limited.skipRest();
    return out;
  }

  private void pass(ZipInputStream zip) throws IOException {
    new Limited(zip, content.length, false).skipRest();
  }

  private static String xml(XMLStreamException e) {
    String text = String.valueOf(e.getMessage());
    int at = text.indexOf("Message: ");
    String plain = (at < 0 ? text : text.substring(at + 9)).replaceAll("\\s+", " ");
    String place = e.getLocation() == null ? "" : "line " + e.getLocation().getLineNumber() + ": ";
    return place + "no sound XML: " + Words.quoted(plain);
  }

  /** Stops at what no model needs. */
  private static final class Limited extends FilterInputStream {
    private final long most;
    private final boolean text;
    private long total;
    private int sinceTag;

    Limited(InputStream in, long packed, boolean text) {
      super(in);
      this.most = Math.min(LARGEST_PART, Math.max(SMALL, packed * MOST_PACKED));
      this.text = text;
    }

    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] b, int off, int len) throws IOException {
      int n = super.read(b, off, len);
      total += Math.max(0, n);
      if (total > most) {
        throw new MeshException(
            "a part of the archive unpacks to more than " + (most >> 20) + " MiB: refused");
      }
      for (int i = off; text && i < off + n; i++) {
        sinceTag = b[i] == '<' || b[i] == '>' ? 0 : sinceTag + 1;
        if (sinceTag > LONGEST_TAG) {
          throw new MeshException("a part has a tag or text of more than 64 KiB: refused");
        }
      }
      return n;
    }

    /** XML readers close what they have read; the archive goes on behind it. */
    @Override
    public void close() {}

    void skipRest() throws IOException {
      byte[] buffer = new byte[1 << 14];
      while (read(buffer, 0, buffer.length) >= 0) {
        // only counted
      }
    }
  }
}
