// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.mesh.Box;
import gelfront.setup.Numerics;
import java.util.List;
import java.util.Locale;

/**
 * How fine the cells are: voxels by the level of detail, smaller cells by a power of two where the
 * feed system is narrow, all within a budget of cells.
 *
 * @param voxel edge, metres
 * @param factor voxels over the cells at gates and other narrow channels; 1: no smaller cells
 * @param narrowest width of the feed system, metres
 * @param across cells wanted across a channel
 */
public record Resolution(double voxel, int factor, double narrowest, double across) {
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

  private static final int MOST_FACTOR = 16;

  /** Of the cells wanted across, what is enough: a drawn circle is a polygon, a hair narrower. */
  private static final double ENOUGH = 0.99;

  /** What a voxel may be larger or smaller than its level's by, to fit the part. */
  private static final double NEAR = 0.1;

  private static final double MOST_CELLS = mostCells(Runtime.getRuntime().maxMemory());
  private static final double MOST_GRID = mostGrid(Runtime.getRuntime().maxMemory());

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
   * @param width that voxels shall fit, unless their size is stated, metres
   * @throws VoxelException if a stated voxel is too fine for the memory, or the gate is so narrow
   *     beside the part that not even the smallest cells show it
   */
  public static Resolution of(
      Numerics numerics, double narrowest, double volume, double boxVolume, double width) {
    double least = Math.max(Math.cbrt(volume / MOST_CELLS), Math.cbrt(boxVolume / MOST_GRID));
    double dx =
        numerics.voxel().isPresent()
            ? stated(numerics.voxel().getAsDouble(), least, volume)
            : Math.max(fitting(numerics.level().voxel(), width), least);
    int factor = 1;
    while (factor < MOST_FACTOR && factor * narrowest / dx < ENOUGH * across(numerics.level())) {
      factor *= 2;
    }
    if (factor * narrowest / dx < LEAST_ACROSS) {
      throw new VoxelException(
          "gate.size",
          String.format(
              Locale.ROOT,
              "the gate (%.2f mm) is too narrow beside voxels of %.2f mm: cells %d times smaller"
                  + " would be %.1f across, 4 are needed",
              narrowest * 1e3,
              dx * 1e3,
              factor,
              factor * narrowest / dx));
    }
    return new Resolution(dx, factor, narrowest, across(numerics.level()));
  }

  /** Cells wanted across the narrowest feed section. */
  private static double across(Numerics.Level level) {
    return switch (level) {
      case QUICK -> 5;
      case NORMAL -> 8;
      case FINE -> 12;
    };
  }

  /**
   * An edge that goes into a width an even number of times, so that the walls on both sides lie
   * alike between cells, as does the plane in the middle; as told where none comes near.
   */
  private static double fitting(double dx, double width) {
    double fits = width / (2 * Math.rint(0.5 * width / dx));
    return Math.abs(fits / dx - 1) <= NEAR ? fits : dx;
  }

  private static double stated(double dx, double least, double volume) {
    if (dx < least) {
      throw new VoxelException(
          "numerics.voxel",
          String.format(
              Locale.ROOT,
              "a voxel of %.3g mm makes %.2g cells; at least %.2f mm fits into the heap of %d MiB",
              dx * 1e3,
              volume / Math.pow(dx, 3),
              1e3 * least,
              Runtime.getRuntime().maxMemory() >> 20));
    }
    return dx;
  }

  /** Edge of the smallest cells, metres. */
  double smallest() {
    return voxel / factor;
  }

  /**
   * Where smaller cells are wanted: round what is too narrow for voxels, and half the narrowest
   * width about it, since the liquid's way into a gate is as narrow as the gate.
   *
   * @param channels boxes of the feed system's pieces, metres, and how wide each is
   */
  public Closer closer(List<Channel> channels) {
    List<Box> boxes =
        channels.stream()
            .filter(c -> factor > 1 && c.width() / voxel < ENOUGH * across)
            .map(c -> c.box().grown(0.5 * narrowest))
            .toList();
    return boxes.isEmpty() ? Closer.NONE : new Closer(factor, boxes);
  }

  /**
   * A piece of the feed system.
   *
   * @param width its narrowest, metres
   */
  public record Channel(Box box, double width) {}
}
