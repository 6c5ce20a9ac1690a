// SPDX-License-Identifier: Apache-2.0
package gelfront.calibrate;

import gelfront.answer.Calibrated;
import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.run.CoolingCurve;
import gelfront.setup.Case;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import gelfront.voxelize.KeptVoxels;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.analysis.UnivariateFunction;

/**
 * Calibrates by a case that describes what the thermometer stood in: cup, tube or part, its wall as
 * the block, the bath or air round it as what cools the block's faces. The model is the program's
 * own conduction. Time 0 is where the cooling begins ({@link TemperatureLog#cooling}); all
 * plastisol is taken to be equally hot then, how hot is fitted with the rest: a single reading is
 * noisy.
 */
public final class CupCalibration {
  private static final int READINGS = 60;

  private final LoadedCase base;
  private final Vec3 sensor;
  private final TemperatureLog log;
  private final KeptVoxels voxels;
  private final Workers workers;
  private final Progress progress;
  private int runs;

  /**
   * @param base describes it; calculated without flow
   * @param part closed, outward-wound, metres
   * @param sensor place of the thermometer, metres
   */
  public CupCalibration(
      LoadedCase base,
      TriangleMesh part,
      Vec3 sensor,
      TemperatureLog log,
      Workers workers,
      Progress progress) {
    this.log = log.cooling().thinned(READINGS);
    double hottest = log.cooling().temperatures()[0];
    this.base = base.with(List.of(Change.degC("shot.temperature", hottest)));
    this.sensor = sensor;
    this.voxels = new KeptVoxels(part);
    this.workers = workers;
    this.progress = progress;
  }

  /** Runs so far. */
  public int runs() {
    return runs;
  }

  /**
   * @param file name of the log
   * @param hash of what was logged
   * @throws IllegalArgumentException in words, if the log tells nothing or the sensor lies outside
   * @throws gelfront.base.CancelledException if the watcher wants to stop
   */
  public Calibrated run(String file, String hash) {
    Map<Quantity, Double> present = new EnumMap<>(Quantity.class);
    for (Quantity q : Quantity.values()) {
      present.put(q, q.present(base.setup()));
    }
    CoolingFit fit = new CoolingFit(this::curve, log.temperatures());
    CoolingFit.Result result = fit.of(present);
    return CoolingFit.calibrated(result, present, base.setup().name(), file, hash, log);
  }

  private double[] curve(Map<Quantity, Double> values) {
    List<Change> changes = new ArrayList<>();
    values.forEach((q, v) -> changes.addAll(q.changes(base, v)));
    Case c = base.with(changes).setup();
    progress.check("fitting, run " + ++runs, 0);
    double last = log.times()[log.times().length - 1];
    UnivariateFunction seen =
        CoolingCurve.of(
                c,
                voxels.of(c, progress),
                sensor,
                last,
                workers,
                (stage, f) -> progress.at("fitting, run " + runs, f))
            .curve();
    return Arrays.stream(log.times()).map(t -> seen.value(Math.min(t, last))).toArray();
  }
}
