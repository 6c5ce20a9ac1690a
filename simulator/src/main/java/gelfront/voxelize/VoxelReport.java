// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import java.util.List;

/**
 * How well the voxels show the shape.
 *
 * @param spacing edge of a voxel, metres
 * @param smallest edge of the cells at narrow channels, metres; the same where voxels are enough
 * @param plastisolCells number
 * @param mouldCells number
 * @param volumeError of the part's cells against its mesh, share
 * @param areaError of the part's true wall area as the links carry it against its mesh, share
 * @param narrowestFeed narrowest width of the feed system, metres
 * @param cellsAcross cells across that width
 * @param notes what was chosen or found, in words
 */
public record VoxelReport(
    double spacing,
    double smallest,
    int plastisolCells,
    int mouldCells,
    double volumeError,
    double areaError,
    double narrowestFeed,
    double cellsAcross,
    List<String> notes) {
  public VoxelReport {
    notes = List.copyOf(notes);
  }
}
