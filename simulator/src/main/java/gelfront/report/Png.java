// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * Writes a PNG (ISO/IEC 15948): 8-bit RGB, no metadata, each row stored as differences to the row
 * above. The same pixels give the same bytes, and nothing of a desktop is loaded.
 */
final class Png {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final byte UP = 2;

  private Png() {}

  /**
   * @param rgb 0xRRGGBB, rows from the top; length {@code width * height}
   */
  static byte[] encode(int[] rgb, int width, int height) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(SIGNATURE);
    ByteBuffer head = ByteBuffer.allocate(13).putInt(width).putInt(height);
    head.put((byte) 8).put((byte) 2);
    chunk("IHDR", head.array(), head.capacity(), out);
    byte[] rows = filtered(rgb, width, height);
    byte[] packed = deflate(rows, 7);
    chunk("IDAT", packed, packed.length, out);
    chunk("IEND", new byte[0], 0, out);
    return out.toByteArray();
  }

  private static byte[] filtered(int[] rgb, int width, int height) {
    byte[] rows = new byte[height * (1 + 3 * width)];
    int at = 0;
    for (int y = 0; y < height; y++) {
      rows[at++] = UP;
      for (int x = 0; x < width; x++) {
        int here = rgb[y * width + x];
        int above = y == 0 ? 0 : rgb[(y - 1) * width + x];
        rows[at++] = (byte) ((here >> 16) - (above >> 16));
        rows[at++] = (byte) ((here >> 8) - (above >> 8));
        rows[at++] = (byte) (here - above);
      }
    }
    return rows;
  }

  /** A zlib stream of the bytes. */
  static byte[] deflate(byte[] bytes, int level) {
    Deflater deflater = new Deflater(level);
    deflater.setInput(bytes);
    deflater.finish();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] buffer = new byte[1 << 16];
    while (!deflater.finished()) {
      out.write(buffer, 0, deflater.deflate(buffer));
    }
    deflater.end();
    return out.toByteArray();
  }

  private static void chunk(String type, byte[] body, int length, ByteArrayOutputStream out) {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 crc = new CRC32();
    crc.update(name);
    crc.update(body, 0, length);
    out.writeBytes(ByteBuffer.allocate(4).putInt(length).array());
    out.writeBytes(name);
    out.write(body, 0, length);
    out.writeBytes(ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
  }
}
