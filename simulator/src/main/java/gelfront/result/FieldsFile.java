// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import gelfront.mesh.Vec3;
import gelfront.result.Fields.Snapshot;
import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.Deflater;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipException;

/**
 * {@code fields.bin}: a gzip stream, big-endian, of
 *
 * <pre>
 * 8 bytes   magic "GELFIELD"
 * int       version, 2; 1 ends after the snapshots
 * 4 double  origin x y z and spacing, metres
 * 3 int     nx ny nz
 * int       n, plastisol cells
 * int       r, runs; then r pairs of int: first cell of the run, cells in it
 * n byte    region
 * n float   set time, s; planes
 * n float   cut-off time, s; planes
 * n short   pocket
 * int       s, snapshots; then each: double time in s, n float temperature in °C; planes
 * int       n, or 0 where the shot itself was not calculated; then as many
 *   float   s at which the front passed; planes
 *   float   °C of it; planes
 * </pre>
 *
 * "Planes": the first (highest) byte of all values, then the second of all and so on, which makes
 * smooth fields pack to about half.
 */
final class FieldsFile {
  static final String FILE = "fields.bin";
  private static final byte[] MAGIC = {'G', 'E', 'L', 'F', 'I', 'E', 'L', 'D'};
  private static final int VERSION = 2;

  private FieldsFile() {}

  /** Writes and leaves {@code to} open. */
  static void write(Fields f, OutputStream to) throws IOException {
    GZIPOutputStream zip = new FastGzip(to);
    DataOutputStream out = new DataOutputStream(zip);
    out.write(MAGIC);
    out.writeInt(VERSION);
    for (double d : new double[] {f.origin().x(), f.origin().y(), f.origin().z(), f.spacing()}) {
      out.writeDouble(d);
    }
    for (int i : new int[] {f.nx(), f.ny(), f.nz(), f.cells().length}) {
      out.writeInt(i);
    }
    writeCells(f.cells(), out);
    out.write(f.region());
    writePlanes(f.setTime(), out);
    writePlanes(f.cutOff(), out);
    for (short p : f.pocket()) {
      out.writeShort(p);
    }
    out.writeInt(f.snapshots().size());
    for (Snapshot s : f.snapshots()) {
      out.writeDouble(s.time());
      writePlanes(s.temperature(), out);
    }
    out.writeInt(f.reached().length);
    writePlanes(f.reached(), out);
    writePlanes(f.arrival(), out);
    out.flush();
    zip.finish();
  }

  private static void writeCells(int[] cells, DataOutputStream out) throws IOException {
    List<int[]> runs = new ArrayList<>();
    for (int i = 0; i < cells.length; i++) {
      if (i > 0 && cells[i] == cells[i - 1] + 1) {
        runs.get(runs.size() - 1)[1]++;
      } else {
        runs.add(new int[] {cells[i], 1});
      }
    }
    out.writeInt(runs.size());
    for (int[] run : runs) {
      out.writeInt(run[0]);
      out.writeInt(run[1]);
    }
  }

  private static void writePlanes(float[] values, OutputStream out) throws IOException {
    int n = values.length;
    byte[] planes = new byte[4 * n];
    for (int i = 0; i < n; i++) {
      int bits = Float.floatToIntBits(values[i]);
      planes[i] = (byte) (bits >>> 24);
      planes[n + i] = (byte) (bits >>> 16);
      planes[2 * n + i] = (byte) (bits >>> 8);
      planes[3 * n + i] = (byte) bits;
    }
    out.write(planes);
  }

  /**
   * Reads what {@link #write} wrote.
   *
   * @throws ResultException in words if it is something else, newer, damaged or truncated
   */
  static Fields read(InputStream from) throws IOException {
    try (DataInputStream in =
        new DataInputStream(new BufferedInputStream(new GZIPInputStream(from, 1 << 16)))) {
      Fields fields = readBody(in);
      if (in.read() >= 0) { // only at its end does a gzip stream check its sum
        throw new ResultException("damaged: more than its fields");
      }
      return fields;
    } catch (EOFException e) {
      throw new ResultException("ends too early: truncated", e);
    } catch (ZipException | IllegalArgumentException e) {
      throw new ResultException("damaged: " + e.getMessage(), e);
    }
  }

  private static Fields readBody(DataInputStream in) throws IOException {
    int version = readHead(in);
    Vec3 origin = new Vec3(in.readDouble(), in.readDouble(), in.readDouble());
    double spacing = in.readDouble();
    int nx = in.readInt();
    int ny = in.readInt();
    int nz = in.readInt();
    long size = Math.multiplyExact(Math.multiplyExact((long) nx, ny), (long) nz);
    int n = count(in.readInt(), size);
    int[] cells = readCells(in, n, size);
    byte[] region = exactly(in, n);
    float[] setTime = readPlanes(in, n);
    float[] cutOff = readPlanes(in, n);
    short[] pocket = new short[n];
    for (int i = 0; i < n; i++) {
      pocket[i] = in.readShort();
    }
    List<Snapshot> snapshots = new ArrayList<>();
    for (int left = count(in.readInt(), 1 << 20); left > 0; left--) {
      snapshots.add(new Snapshot(in.readDouble(), readPlanes(in, n)));
    }
    int filled = version > 1 ? count(in.readInt(), n) : 0;
    float[] reached = readPlanes(in, filled);
    float[] arrival = readPlanes(in, filled);
    return new Fields(
        origin, spacing, nx, ny, nz, cells, region, setTime, cutOff, pocket, snapshots, reached,
        arrival);
  }

  private static int readHead(DataInputStream in) throws IOException {
    for (byte b : MAGIC) {
      if (in.readByte() != b) {
        throw new ResultException("not a field file of gelfront");
      }
    }
    int version = in.readInt();
    if (version > VERSION) {
      throw new ResultException(
          "written by a newer gelfront (format "
              + version
              + "; this one reads up to "
              + VERSION
              + ")");
    }
    return version;
  }

  private static int[] readCells(DataInputStream in, int n, long size) throws IOException {
    int[] cells = new int[n];
    int at = 0;
    int next = 0;
    for (int runs = count(in.readInt(), n); runs > 0; runs--) {
      int first = in.readInt();
      int length = count(in.readInt(), n - at);
      if (first < next || first > size - length) {
        throw new ResultException("damaged: cells out of order");
      }
      for (int i = 0; i < length; i++) {
        cells[at++] = first + i;
      }
      next = first + length;
    }
    if (at != n) {
      throw new ResultException("damaged: " + at + " cells instead of " + n);
    }
    return cells;
  }

  private static float[] readPlanes(DataInputStream in, int n) throws IOException {
    byte[] planes = exactly(in, 4 * n);
    float[] values = new float[n];
    for (int i = 0; i < n; i++) {
      int bits =
          planes[i] << 24
              | (planes[n + i] & 255) << 16
              | (planes[2 * n + i] & 255) << 8
              | (planes[3 * n + i] & 255);
      values[i] = Float.intBitsToFloat(bits);
    }
    return values;
  }

  private static byte[] exactly(DataInputStream in, int n) throws IOException {
    byte[] bytes = in.readNBytes(n);
    if (bytes.length < n) {
      throw new EOFException();
    }
    return bytes;
  }

  private static int count(int value, long most) throws ResultException {
    if (value < 0 || value > most || value > Integer.MAX_VALUE / 4) {
      throw new ResultException("damaged: a count of " + value);
    }
    return value;
  }

  /** Level 1: three times as fast as the default for a tenth more bytes on such fields. */
  private static final class FastGzip extends GZIPOutputStream {
    FastGzip(OutputStream out) throws IOException {
      super(out, 1 << 16);
      def.setLevel(Deflater.BEST_SPEED);
    }
  }
}
