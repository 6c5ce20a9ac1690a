package gelfront.voxelize;

import gelfront.grid.Cavity;
import gelfront.grid.MouldCells;
import gelfront.grid.VoxelModel;
import gelfront.material.MouldMaterial;
import gelfront.mesh.Box;
import gelfront.mesh.Vec3;
import gelfront.setup.Block;
import java.util.Arrays;

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
  private final double[] conductivity;
  private final double[] heat;

  private MouldBuilder(Cavity cavity, Block block, MouldGrid grid) {
    this.cavity = cavity;
    this.block = block;
    this.grid = grid;
    int n = grid.coarse().cellCount();
    this.metal = MetalVolumes.of(cavity, grid);
    this.conductivity = new double[n];
    this.heat = new double[n];
    for (int c = 0; c < n; c++) {
      MouldMaterial m = materialAt(grid.coarse().centre(c));
      conductivity[c] = m.conductivity();
      heat[c] = m.volumetricHeat();
    }
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
    return new MouldBuilder(cavity, block, MouldGrid.of(cavity.grid(), box, voxels)).build();
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
    int m = 0;
    for (int c = 0; c < number.length; c++) {
      number[c] = metal.volume()[c] > 0 ? m : -1;
      if (metal.volume()[c] > 0) {
        cells[m++] = c;
      }
    }
    MouldCells mould = network(Arrays.copyOf(cells, m), number);
    return new MouldLinks(cavity, grid, metal)
        .join(mould, conductivity, block.contactConductance());
  }

  private MouldCells network(int[] cells, int[] number) {
    int m = cells.length;
    double[] capacity = new double[m];
    double[] start = new double[m];
    int[] neighbour = new int[3 * m];
    double[] conductance = new double[3 * m];
    double[] air = new double[m];
    double[] airTemperature = new double[m];
    MouldFaces faces = new MouldFaces(grid, cavity, conductivity, metal.shift());
    for (int i = 0; i < m; i++) {
      int c = cells[i];
      capacity[i] = metal.volume()[c] * heat[c];
      start[i] = startAt(grid.coarse().centre(c));
      double[] out = faces.outwards(c, block);
      air[i] = out[0];
      airTemperature[i] = out[1];
      for (int a = 0; a < 3; a++) {
        boolean last = grid.coarse().position(c, a) + 1 == grid.coarse().count(a);
        int next = last ? -1 : number[c + grid.stride(a)];
        neighbour[3 * i + a] = next;
        conductance[3 * i + a] = next < 0 ? 0 : faces.upwards(c, a);
      }
    }
    return new MouldCells(
        grid.coarse(), cells, number, capacity, start, neighbour, conductance, air, airTemperature);
  }
}
