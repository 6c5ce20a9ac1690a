package gelfront.validation;

import gelfront.base.Workers;
import gelfront.grid.Cavity;
import gelfront.grid.MouldCells;
import gelfront.grid.RectilinearGrid;
import gelfront.grid.UniformGrid;
import gelfront.grid.VoxelModel;
import gelfront.heat.MouthFilm;
import gelfront.heat.SplitStepper;
import gelfront.material.HeatCurves;
import gelfront.mesh.Vec3;
import gelfront.state.ThermalState;
import java.util.Arrays;

/** A row of plastisol cells against a mould at x = 0, insulated everywhere else: one dimension. */
final class Column {
  private final VoxelModel model;
  private final double spacing;

  private Column(VoxelModel model, double spacing) {
    this.model = model;
    this.spacing = spacing;
  }

  /**
   * Against something that stays at one temperature.
   *
   * @param film W/m2 K, may be huge
   */
  static Column against(double temperature, double film, int cells, double spacing) {
    return against(temperature, film, cells, spacing, 1, 1, 1e6, 1e20);
  }

  /**
   * Against a row of mould cells.
   *
   * @param film between both, W/m2 K
   * @param mouldCells number, edge in metres, conductivity, J/m3 K
   */
  static Column against(
      double temperature,
      double film,
      int cells,
      double spacing,
      int mouldCells,
      double mouldSpacing,
      double k,
      double volumetric) {
    UniformGrid grid = new UniformGrid(Vec3.ZERO, spacing, cells + 2, 3, 3);
    int[] at = new int[cells];
    int[] neighbours = new int[6 * cells];
    for (int i = 0; i < cells; i++) {
      at[i] = grid.index(i + 1, 1, 1);
      Arrays.fill(neighbours, 6 * i, 6 * i + 6, i);
      neighbours[6 * i] = Math.max(0, i - 1);
      neighbours[6 * i + 1] = Math.min(cells - 1, i + 1);
    }
    Cavity.Walls walls =
        new Cavity.Walls(
            new int[] {0},
            new byte[] {0},
            new float[] {(float) (0.5 * spacing)},
            new float[] {1},
            new boolean[] {false});
    Cavity cavity = new Cavity(grid, at, neighbours, new byte[cells], walls);
    double area = spacing * spacing;
    double depth = mouldCells == 1 ? 0 : 0.5 * mouldSpacing / k;
    double resistance = (1 / film + depth) / area;
    return new Column(
        new VoxelModel(
            cavity,
            mould(temperature, mouldCells, mouldSpacing, k, volumetric, area),
            new int[] {0},
            new double[] {resistance}),
        spacing);
  }

  private static MouldCells mould(
      double temperature, int n, double dx, double k, double volumetric, double area) {
    double[] x = new double[n + 1];
    for (int i = 0; i <= n; i++) {
      x[i] = i * dx;
    }
    double side = Math.sqrt(area);
    RectilinearGrid grid = new RectilinearGrid(x, new double[] {0, side}, new double[] {0, side});
    int[] neighbour = new int[3 * n];
    Arrays.fill(neighbour, -1);
    double[] conductance = new double[3 * n];
    int[] cells = new int[n];
    double[] capacity = new double[n];
    double[] start = new double[n];
    for (int i = 0; i < n; i++) {
      cells[i] = i;
      capacity[i] = volumetric * area * dx;
      start[i] = temperature;
      if (i + 1 < n) {
        neighbour[3 * i] = i + 1;
        conductance[3 * i] = k * area / dx;
      }
    }
    return new MouldCells(
        grid, cells, cells, capacity, start, neighbour, conductance, new double[n], temperature);
  }

  ThermalState start(HeatCurves curves, double temperature) {
    return new ThermalState(model, curves, temperature);
  }

  SplitStepper stepper(HeatCurves curves) {
    return new SplitStepper(model, curves, Workers.SERIAL);
  }

  /**
   * Steps to a time.
   *
   * @param first s
   * @param growth of a step with time
   */
  static void run(ThermalState s, SplitStepper stepper, double until, double first, double growth) {
    while (s.time < until * (1 - 1e-12)) {
      stepper.step(s, Math.min(until - s.time, first + growth * s.time), MouthFilm.INSULATED);
    }
  }

  /** Metres from the wall to a cell's centre. */
  double place(int cell) {
    return (cell + 0.5) * spacing;
  }

  /** °C at a place, linear between cell centres. */
  double at(ThermalState s, double x) {
    double f = x / spacing - 0.5;
    int i = (int) Math.max(0, Math.min(s.temperature.length - 2, Math.floor(f)));
    return s.temperature[i] + (f - i) * (s.temperature[i + 1] - s.temperature[i]);
  }
}
