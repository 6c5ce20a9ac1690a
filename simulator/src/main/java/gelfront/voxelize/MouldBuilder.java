// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.Cavity;
import gelfront.grid.MouldCells;
import gelfront.grid.RectilinearGrid;
import gelfront.grid.VoxelModel;
import gelfront.material.MouldMaterial;
import gelfront.mesh.Box;
import gelfront.mesh.Vec3;
import gelfront.setup.Block;
import gelfront.setup.FeedSystem;
import java.util.Arrays;
import java.util.Optional;

/**
 * The block's cells round a cavity. Near the cavity a mould cell is a cube of whole voxels, as
 * coarse as the material's diffusion length allows: aluminium needs millimetres, resin a voxel
 * ({@link MouldResolution}). Outside they stretch towards the block's faces.
 */
public final class MouldBuilder {
  private final Cavity cavity;
  private final Block block;
  private final MouldGrid grid;
  private final MetalVolumes metal;
  private final Optional<TubeWall> tube;
  private final double[] conductivity;
  private final double[] heat;
  private final Optional<Outside> outside;
  private final Optional<OutsideFilm> film;

  private MouldBuilder(
      Cavity cavity,
      Block block,
      MouldGrid grid,
      Optional<TubeWall> tube,
      Optional<MouldSolids> solids) {
    this.outside = solids.map(s -> s.outside(grid.coarse()));
    this.tube = tube;
    this.cavity = cavity;
    this.block = block;
    this.grid = grid;
    int n = grid.coarse().cellCount();
    this.metal = MetalVolumes.of(cavity, grid, tube, outside);
    this.conductivity = new double[n];
    this.heat = new double[n];
    for (int c = 0; c < n; c++) {
      MouldMaterial m = materialAt(grid.coarse().centre(c));
      conductivity[c] = m.conductivity();
      heat[c] = m.volumetricHeat();
    }
    this.film =
        solids.map(
            s ->
                OutsideFilm.of(
                    s.mesh(),
                    grid.coarse(),
                    outside.orElseThrow(),
                    metal.volume(),
                    conductivity,
                    block));
  }

  /**
   * @param cavity inside the block
   * @param block its material, films and contact
   * @param box its outer faces, metres
   */
  public static VoxelModel build(Cavity cavity, Block block, Box box) {
    return build(cavity, block, box, MouldResolution.of(cavity, block));
  }

  /**
   * As above, as coarse as told.
   *
   * @param per voxels along the edge of a mould cell next to the cavity
   */
  public static VoxelModel build(Cavity cavity, Block block, Box box, int per) {
    if (per < 1) {
      throw new IllegalArgumentException("a mould cell is one voxel at least: " + per);
    }
    return build(cavity, block, box, MouldResolution.even(cavity.grid(), per));
  }

  private static VoxelModel build(Cavity cavity, Block block, Box box, int[][] voxels) {
    MouldGrid grid = MouldGrid.of(cavity.grid(), box, voxels);
    return new MouldBuilder(cavity, block, grid, Optional.empty(), Optional.empty()).build();
  }

  /**
   * As above, with what else there may be.
   *
   * @param tube on the block
   * @param foot where it stands
   * @param solids outside which there is air; absent: all of the box is metal
   */
  static VoxelModel build(
      Cavity cavity,
      Block block,
      Box box,
      Optional<FeedSystem.Extender> tube,
      Mouth foot,
      Optional<MouldSolids> solids) {
    MouldGrid grid = MouldGrid.of(cavity.grid(), box, MouldResolution.of(cavity, block));
    Optional<TubeWall> wall =
        tube.map(t -> new TubeWall(t, foot, block.contactConductance(), cavity, box));
    return new MouldBuilder(cavity, block, grid, wall, solids).build();
  }

  private MouldMaterial materialAt(Vec3 p) {
    MouldMaterial m = block.material();
    for (Block.Insert i : block.inserts()) {
      if (i.region().contains(p)) {
        m = i.material();
      }
    }
    return m;
  }

  private double startAt(Vec3 p) {
    double t = block.startTemperature();
    for (Block.WarmSpot w : block.warmSpots()) {
      if (w.region().contains(p)) {
        t = w.temperature();
      }
    }
    return t;
  }

  private VoxelModel build() {
    int[] number = new int[metal.volume().length];
    int[] cells = new int[metal.volume().length];
    int rings = tube.map(TubeWall::rings).orElse(0);
    int m = tube.isPresent() && !tube.get().upper() ? rings : 0;
    int first = m;
    for (int c = 0; c < number.length; c++) {
      number[c] = metal.volume()[c] > 0 ? m : -1;
      if (metal.volume()[c] > 0) {
        cells[m++] = c;
      }
    }
    MouldCells mould =
        network(Arrays.copyOfRange(cells, first, m), number, first, m - first + rings);
    return new MouldLinks(cavity, grid, metal, tube)
        .join(mould, conductivity, block.contactConductance());
  }

  /**
   * @param cells grid number of the block's
   * @param first number of the first of them: behind the rings of a tube on a lower face, for a
   *     neighbour upwards has a higher number
   * @param m cells in all
   */
  private MouldCells network(int[] cells, int[] number, int first, int m) {
    double[] capacity = new double[m];
    double[] start = new double[m];
    int[] neighbour = new int[3 * m];
    double[] conductance = new double[3 * m];
    double[] touching = new double[3 * m];
    double[] air = new double[m];
    double[] airTemperature = new double[m];
    MouldFaces faces = new MouldFaces(grid, cavity, conductivity, metal.shift(), tube, outside);
    int[] at = new int[m];
    for (int k = 0; k < cells.length; k++) {
      int c = cells[k];
      int i = first + k;
      at[i] = c;
      capacity[i] = metal.volume()[c] * heat[c];
      start[i] = startAt(grid.coarse().centre(c));
      double[] out = outwards(faces, c);
      air[i] = out[0];
      airTemperature[i] = out[1];
      for (int a = 0; a < 3; a++) {
        boolean last = grid.coarse().position(c, a) + 1 == grid.coarse().count(a);
        int next = last ? -1 : number[c + grid.stride(a)];
        neighbour[3 * i + a] = next;
        conductance[3 * i + a] = next < 0 ? 0 : faces.upwards(c, a);
        touching[3 * i + a] = next < 0 ? 0 : faces.touching(c, a);
      }
    }
    MouldCells all =
        new MouldCells(
            grid.coarse(),
            at,
            number,
            capacity,
            start,
            neighbour,
            conductance,
            touching,
            air,
            airTemperature);
    tube.ifPresent(t -> rings(t, all, first > 0 ? 0 : cells.length));
    return all;
  }

  private double[] outwards(MouldFaces faces, int cell) {
    double[] out = faces.outwards(cell, block);
    double inside = film.isPresent() ? film.get().conductance(cell) : 0;
    if (inside == 0) {
      return out;
    }
    double sum = out[0] + inside;
    return new double[] {sum, (out[0] * out[1] + film.orElseThrow().heat(cell)) / sum};
  }

  /**
   * Fills in the tube's rings, joined to each other and to the block along the axis.
   *
   * @param first number of the one with the lowest coordinate
   */
  private void rings(TubeWall t, MouldCells all, int first) {
    int foot = metalUnder(t);
    for (int k = 0; k < t.rings(); k++) {
      int i = first + k;
      all.cells()[i] = foot;
      all.capacity()[i] = t.capacity();
      all.startTemperature()[i] = t.startTemperature();
      all.airConductance()[i] = t.toAir();
      all.airTemperature()[i] = block.airTemperature();
      Arrays.fill(all.neighbour(), 3 * i, 3 * i + 3, -1);
      int last = t.rings() - 1;
      if (k < last) {
        all.neighbour()[3 * i + t.axis()] = i + 1;
        all.conductance()[3 * i + t.axis()] = t.upwards();
      }
    }
    int lowest = t.upper() ? all.number()[foot] : first + t.rings() - 1;
    all.neighbour()[3 * lowest + t.axis()] = t.upper() ? first : all.number()[foot];
    all.conductance()[3 * lowest + t.axis()] = t.toBlock();
  }

  /** Grid cell of the block under the tube's wall, or the next one inwards that holds metal. */
  private int metalUnder(TubeWall t) {
    Vec3 p = t.under();
    RectilinearGrid g = grid.coarse();
    int c = g.index(g.find(0, p.x()), g.find(1, p.y()), g.find(2, p.z()));
    if (metal.volume()[c] > 0) {
      return c;
    }
    throw new VoxelException(
        "extender.bore", "the extender finds no metal to stand on: its bore is too small");
  }
}
