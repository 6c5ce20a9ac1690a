// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.finding.Filled;
import gelfront.result.ArtifactWriter;
import gelfront.result.StoredRun;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/**
 * filling.csv: the shot over time, seconds from the first liquid on, mm3, kPa over the air's and
 * millimetres; RFC 4180. The head alone where the shot itself was not calculated.
 */
public final class FillingCsv implements ArtifactWriter {
  @Override
  public String fileName() {
    return "filling.csv";
  }

  @Override
  public void write(StoredRun run, OutputStream out) throws IOException {
    StringBuilder s =
        new StringBuilder(
            "time_s,filled_mm3,mouth_kPa,gate_kPa,front_x_mm,front_y_mm,front_z_mm\r\n");
    run.findings().filled().course().forEach(m -> s.append(line(m)).append("\r\n"));
    out.write(s.toString().getBytes(StandardCharsets.UTF_8));
  }

  private static String line(Filled.Moment m) {
    return String.join(
        ",",
        PocketsCsv.number(m.time(), 4),
        PocketsCsv.number(m.volume() * 1e9, 2),
        PocketsCsv.number(m.mouth() * 1e-3, 3),
        PocketsCsv.number(m.gate() * 1e-3, 3),
        AirCsv.place(m.front()));
  }
}
