package gelfront.report;

import gelfront.finding.Dent;
import gelfront.finding.Pocket;
import gelfront.result.ArtifactWriter;
import gelfront.result.StoredRun;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** pockets.csv: one line a pocket, millimetres and seconds; RFC 4180. */
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
            + "dent_low_mm,dent_high_mm,sentence\r\n");
    run.findings().pockets().forEach(p -> s.append(line(p)).append("\r\n"));
    out.write(s.toString().getBytes(StandardCharsets.UTF_8));
  }

  private static String line(Pocket p) {
    Dent d = p.dents().get(0);
    return String.join(
        ",",
        List.of(
            String.valueOf(p.number()),
            cell(p.severity().name()),
            place(p.centre()),
            Say.fixed(p.volume() * 1e9, 2),
            Say.fixed(p.cutOff(), 3),
            Say.fixed(p.lastSet(), 3),
            Say.fixed(p.meanTemperatureAtCutOff(), 2),
            cell(p.constriction().kind().name()),
            place(p.constriction().place()),
            Say.fixed(p.constriction().width() * 1e3, 3),
            Say.fixed(p.unfedLow() * 1e9, 2),
            Say.fixed(p.unfedHigh() * 1e9, 2),
            place(d.place()),
            Say.fixed(d.depthLow() * 1e3, 4),
            Say.fixed(d.depthHigh() * 1e3, 4),
            cell(p.sentence())));
  }

  private static String place(gelfront.mesh.Vec3 p) {
    return Say.fixed(p.x() * 1e3, 3)
        + ","
        + Say.fixed(p.y() * 1e3, 3)
        + ","
        + Say.fixed(p.z() * 1e3, 3);
  }

  /** Quoted; what a spreadsheet would take for a formula gets a leading apostrophe. */
  static String cell(String any) {
    boolean formula = !any.isEmpty() && "=+-@\t\r".indexOf(any.charAt(0)) >= 0;
    return '"' + (formula ? "'" : "") + any.replace("\"", "\"\"") + '"';
  }
}
