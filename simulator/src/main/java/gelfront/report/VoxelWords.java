// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.answer.VoxelDoubt;
import gelfront.answer.VoxelDoubt.At;
import gelfront.base.Units;
import gelfront.finding.Constriction;
import gelfront.finding.Severity;
import java.util.List;

/** Whether a verdict hangs on the size of the voxels, in sentences. */
public final class VoxelWords {
  private VoxelWords() {}

  /** In millimetres. */
  public static List<String> of(VoxelDoubt d) {
    return of(d, Units.METRIC);
  }

  /** What both sizes say, then what follows from it. */
  public static List<String> of(VoxelDoubt d, Units units) {
    return d.coarser()
        .map(rough -> List.of(both(d.finer(), rough, units), follows(d, rough)))
        .orElseGet(
            () ->
                List.of(
                    "Whether the verdict hangs on the voxel size isn't known: coarser voxels give"
                        + " no result ("
                        + d.error()
                        + ")."));
  }

  private static String both(At fine, At rough, Units units) {
    return "In voxels of " + said(fine, units) + "; of " + said(rough, units) + ".";
  }

  private static String said(At at, Units units) {
    String size = units.length(at.voxel(), 2) + " (" + at.level() + "): ";
    if (at.blamed().isEmpty()) {
      return size + "no dent";
    }
    Constriction c = at.blamed().get();
    return size
        + units.range(at.dentLow(), at.dentHigh(), 2)
        + " deep, "
        + Say.culprit(c.kind())
        + " at "
        + units.lengths("%s, %s, %s", 1, c.place().x(), c.place().y(), c.place().z())
        + ", closed after "
        + Say.time(c.closedAt());
  }

  private static String follows(VoxelDoubt d, At rough) {
    boolean dents = d.finer().severity() != Severity.CLEAN;
    return switch (d.hold()) {
      case HANGS ->
          "The verdict hangs on the voxel size: in the coarser ones the part "
              + Say.severity(rough.severity())
              + ". "
              + finest(d.finer());
      case CLOSE ->
          "The verdict is the same in both, but close: still finer voxels could change it. "
              + finest(d.finer());
      case HOLDS ->
          "The verdict doesn't hang on the voxel size"
              + (!dents || d.sameBlamed() ? "." : ", but what is to blame does. ")
              + (!dents || d.sameBlamed() ? "" : finest(d.finer()));
      case UNKNOWN -> throw new IllegalStateException("nothing to compare");
    };
  }

  private static String finest(At fine) {
    return fine.level().equals("fine")
        ? "State a smaller numerics.voxel before you cut metal."
        : "Calculate it at level fine before you cut metal.";
  }
}
