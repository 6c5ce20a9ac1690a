// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.finding.Dent;
import gelfront.finding.Pocket;
import gelfront.mesh.Vec3;
import gelfront.result.ArtifactWriter;
import gelfront.result.StoredRun;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * pockets.csv: one line a pocket, millimetres and seconds; RFC 4180. A time that never came and the
 * dent of a pocket without one are empty fields.
 */
public final class PocketsCsv implements ArtifactWriter {
  @Override
  public String fileName() {
    return "pockets.csv";
  }

  @Override
  public void write(StoredRun run, OutputStream out) throws IOException {
    StringBuilder s = new StringBuilder();
    s.append(
        "number,severity,x_mm,y_mm,z_mm,volume_mm3,cut_off_s,last_set_s,temperature_at_cut_off_degC,"
            + "constriction,constriction_x_mm,constriction_y_mm,constriction_z_mm,"
            + "constriction_width_mm,unfed_low_mm3,unfed_high_mm3,dent_x_mm,dent_y_mm,dent_z_mm,"
            + "dent_low_mm,dent_high_mm,open_until_s,margin_s,dent_volume_mm3,bench_sign,sentence\r\n");
    run.findings().pockets().forEach(p -> s.append(line(p)).append("\r\n"));
    out.write(s.toString().getBytes(StandardCharsets.UTF_8));
  }

  private static String line(Pocket p) {
    return String.join(
        ",",
        List.of(
            String.valueOf(p.number()),
            cell(p.severity().name()),
            place(p.centre()),
            number(p.volume() * 1e9, 2),
            number(p.cutOff(), 3),
            number(p.lastSet(), 3),
            number(p.meanTemperatureAtCutOff(), 2),
            cell(p.constriction().kind().name()),
            place(p.constriction().place()),
            number(p.constriction().width() * 1e3, 3),
            number(p.unfedLow() * 1e9, 2),
            number(p.unfedHigh() * 1e9, 2),
            p.dents().isEmpty() ? ",,,," : dent(p.dents().get(0)),
            number(p.openUntil(), 3),
            number(p.margin(), 3),
            number(p.dentVolume() * 1e9, 2),
            cell(p.sign()),
            cell(p.sentence())));
  }

  private static String dent(Dent d) {
    String depths = number(d.depthLow() * 1e3, 4) + "," + number(d.depthHigh() * 1e3, 4);
    return place(d.place()) + "," + depths;
  }

  private static String place(Vec3 p) {
    return number(p.x() * 1e3, 3) + "," + number(p.y() * 1e3, 3) + "," + number(p.z() * 1e3, 3);
  }

  /** Empty where it is no number: a spreadsheet would take "Infinity" for text. */
  static String number(double v, int decimals) {
    return Double.isFinite(v) ? Say.fixed(v, decimals) : "";
  }

  /** Quoted; what a spreadsheet would take for a formula gets a leading apostrophe. */
  static String cell(String any) {
    boolean formula = !any.isEmpty() && "=+-@\t\r".indexOf(any.charAt(0)) >= 0;
    return '"' + (formula ? "'" : "") + any.replace("\"", "\"\"") + '"';
  }
}
