package gelfront.voxelize;

import gelfront.setup.Numerics;
import java.util.Locale;

/** Picks the voxel: so many across the narrowest feed section, within a budget of cells. */
final class Resolution {
  /** Fewer voxels than this across a gate say nothing about when it closes. */
  static final double LEAST_ACROSS = 4;

  /**
   * Bytes of heap for each plastisol cell of a whole run: timing --scaling has seen 490 at the
   * peak, garbage included, with 5 million cells in 4 GiB and no flow; some 230 more the flow
   * takes.
   */
  private static final double BYTES_PER_CELL = 720;

  /** Bytes of heap for each cell of the box round the cavity, plastisol or not; an estimate. */
  private static final double BYTES_PER_GRID_CELL = 18;

  /** Cells are numbered by ints. */
  private static final double MOST_NUMBERS = 2e9;

  private static final double MOST_CELLS = mostCells(Runtime.getRuntime().maxMemory());
  private static final double MOST_GRID = mostGrid(Runtime.getRuntime().maxMemory());

  private Resolution() {}

  /** Plastisol cells that fit into so many bytes of heap. */
  static double mostCells(long heap) {
    return heap / BYTES_PER_CELL;
  }

  /** Cells of the box round the cavity that fit into so many bytes of heap. */
  static double mostGrid(long heap) {
    return Math.min(MOST_NUMBERS, heap / BYTES_PER_GRID_CELL);
  }

  /**
   * @param narrowest width of the feed system, metres
   * @param volume of the cavity, m3
   * @param boxVolume of the box round it, m3
   * @throws VoxelException if a stated voxel is too coarse for the gate or too fine for the memory
   */
  static double voxel(Numerics numerics, double narrowest, double volume, double boxVolume) {
    if (numerics.voxel().isPresent()) {
      return stated(numerics.voxel().getAsDouble(), narrowest, volume, boxVolume);
    }
    double wanted =
        switch (numerics.level()) {
          case QUICK -> Math.min(0.8e-3, narrowest / 5);
          case NORMAL -> Math.min(0.5e-3, narrowest / 8);
          case FINE -> Math.min(0.35e-3, narrowest / 12);
        };
    double least = Math.max(Math.cbrt(volume / MOST_CELLS), Math.cbrt(boxVolume / MOST_GRID));
    double dx = Math.max(wanted, least);
    if (narrowest / dx < LEAST_ACROSS) {
      throw new VoxelException(
          String.format(
              Locale.ROOT,
              "the gate (%.2f mm) is too narrow for a part of this size: it would be %.1f voxels"
                  + " across, 4 are needed",
              narrowest * 1e3,
              narrowest / dx));
    }
    return dx;
  }

  private static double stated(double dx, double narrowest, double volume, double boxVolume) {
    if (volume / Math.pow(dx, 3) > MOST_CELLS || boxVolume / Math.pow(dx, 3) > MOST_GRID) {
      throw new VoxelException(
          String.format(
              Locale.ROOT,
              "a voxel of %.3g mm makes %.2g cells; at least %.2f mm fits into the heap of %d MiB",
              dx * 1e3,
              volume / Math.pow(dx, 3),
              1e3 * Math.max(Math.cbrt(volume / MOST_CELLS), Math.cbrt(boxVolume / MOST_GRID)),
              Runtime.getRuntime().maxMemory() >> 20));
    }
    if (narrowest / dx < LEAST_ACROSS) {
      throw new VoxelException(
          String.format(
              Locale.ROOT,
              "voxels of %.2f mm are too coarse for a gate of %.2f mm (%.1f across): state %.2f mm"
                  + " or less, or leave the voxel out",
              dx * 1e3,
              narrowest * 1e3,
              narrowest / dx,
              narrowest / 8 * 1e3));
    }
    return dx;
  }
}
