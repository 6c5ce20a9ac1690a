// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.result.ArtifactWriter;
import gelfront.result.Fields;
import gelfront.result.StoredRun;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.zip.DeflaterOutputStream;

/**
 * voxels.vti: VTK image data (XML, appended raw, zlib blocks) with cell arrays region, pocket,
 * set_time, cut_off. Millimetres and seconds; outside the plastisol region is -1, times are -1;
 * "never" is 1e30.
 */
public final class VoxelsVti implements ArtifactWriter {
  private static final int BLOCK = 1 << 20;
  private static final float NEVER = 1e30f;

  @Override
  public String fileName() {
    return "voxels.vti";
  }

  @Override
  public void write(StoredRun run, OutputStream out) throws IOException {
    Fields f = run.fields();
    List<byte[]> arrays = new ArrayList<>();
    StringBuilder xml = new StringBuilder();
    String extent = String.format(Locale.ROOT, "0 %d 0 %d 0 %d", f.nx(), f.ny(), f.nz());
    double mm = f.spacing() * 1e3;
    xml.append(
        "<?xml version=\"1.0\"?>\n<VTKFile type=\"ImageData\" version=\"1.0\" byte_order=\"LittleEndian\" header_type=\"UInt32\" compressor=\"vtkZLibDataCompressor\">\n");
    xml.append(
        String.format(
                Locale.ROOT,
                "<ImageData WholeExtent=\"%s\" Origin=\"%.9g %.9g %.9g\" Spacing=\"%.9g %.9g %.9g\">%n",
                extent,
                f.origin().x() * 1e3,
                f.origin().y() * 1e3,
                f.origin().z() * 1e3,
                mm,
                mm,
                mm)
            .replace("\r", ""));
    xml.append("<Piece Extent=\"").append(extent).append("\"><CellData Scalars=\"set_time\">\n");
    float[] pocket = new float[f.cells().length];
    float[] region = new float[f.cells().length];
    for (int c = 0; c < pocket.length; c++) {
      pocket[c] = f.pocket()[c];
      region[c] = f.region()[c];
    }
    long offset = 0;
    offset = add(xml, arrays, offset, "set_time", dense(f, f.setTime()));
    offset = add(xml, arrays, offset, "cut_off", dense(f, f.cutOff()));
    offset = add(xml, arrays, offset, "region", dense(f, region));
    offset = add(xml, arrays, offset, "pocket", dense(f, pocket));
    if (f.filled()) {
      offset = add(xml, arrays, offset, "fill_time", dense(f, f.reached()));
      add(xml, arrays, offset, "arrival_temperature", dense(f, f.arrival()));
    }
    xml.append("</CellData></Piece></ImageData>\n<AppendedData encoding=\"raw\">\n_");
    out.write(xml.toString().getBytes(StandardCharsets.US_ASCII));
    for (byte[] a : arrays) {
      out.write(a);
    }
    out.write("\n</AppendedData>\n</VTKFile>\n".getBytes(StandardCharsets.US_ASCII));
  }

  private static long add(
      StringBuilder xml, List<byte[]> arrays, long offset, String name, byte[] values)
      throws IOException {
    xml.append("<DataArray type=\"Float32\" Name=\"").append(name);
    xml.append("\" format=\"appended\" offset=\"").append(offset).append("\"/>\n");
    byte[] packed = packed(values);
    arrays.add(packed);
    return offset + packed.length;
  }

  private static byte[] dense(Fields f, float[] values) {
    ByteBuffer b = ByteBuffer.allocate(4 * f.nx() * f.ny() * f.nz()).order(ByteOrder.LITTLE_ENDIAN);
    while (b.hasRemaining()) {
      b.putFloat(-1);
    }
    for (int c = 0; c < values.length; c++) {
      b.putFloat(4 * f.cells()[c], Float.isInfinite(values[c]) ? NEVER : values[c]);
    }
    return b.array();
  }

  /** Number of blocks, block size, last block's size, packed sizes, then the packed blocks. */
  private static byte[] packed(byte[] raw) throws IOException {
    int blocks = (raw.length + BLOCK - 1) / BLOCK;
    ByteBuffer head = ByteBuffer.allocate(4 * (3 + blocks)).order(ByteOrder.LITTLE_ENDIAN);
    head.putInt(blocks).putInt(BLOCK).putInt(raw.length % BLOCK);
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    for (int i = 0; i < blocks; i++) {
      int before = body.size();
      try (DeflaterOutputStream z = new DeflaterOutputStream(body)) {
        z.write(raw, i * BLOCK, Math.min(BLOCK, raw.length - i * BLOCK));
      }
      head.putInt(body.size() - before);
    }
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    all.write(head.array());
    body.writeTo(all);
    return all.toByteArray();
  }
}
