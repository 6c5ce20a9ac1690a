// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.finding.Filled;
import gelfront.mesh.Vec3;
import gelfront.result.ArtifactWriter;
import gelfront.result.StoredRun;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * air.csv: one line for each place of trapped air, millimetres and seconds; RFC 4180. The head
 * alone where none is trapped or the shot itself was not calculated.
 */
public final class AirCsv implements ArtifactWriter {
  @Override
  public String fileName() {
    return "air.csv";
  }

  @Override
  public void write(StoredRun run, OutputStream out) throws IOException {
    StringBuilder s = new StringBuilder();
    s.append(
        "air,x_mm,y_mm,z_mm,cut_off_s,volume_then_mm3,volume_held_mm3,pressure_kPa,vent_x_mm,vent_y_mm,"
            + "vent_z_mm,off_parting_face_mm,proposal\r\n");
    run.findings().filled().air().forEach(a -> s.append(line(a)).append("\r\n"));
    out.write(s.toString().getBytes(StandardCharsets.UTF_8));
  }

  private static String line(Filled.TrappedAir a) {
    return String.join(
        ",",
        List.of(
            PocketsCsv.cell(a.letter()),
            place(a.place()),
            PocketsCsv.number(a.since(), 3),
            PocketsCsv.number(a.began() * 1e9, 2),
            PocketsCsv.number(a.volume() * 1e9, 2),
            PocketsCsv.number(a.pressure() * 1e-3, 2),
            place(a.vent()),
            PocketsCsv.number(a.offFace() * 1e3, 2),
            PocketsCsv.cell(a.proposal())));
  }

  static String place(Vec3 p) {
    return String.join(
        ",",
        PocketsCsv.number(p.x() * 1e3, 3),
        PocketsCsv.number(p.y() * 1e3, 3),
        PocketsCsv.number(p.z() * 1e3, 3));
  }
}
