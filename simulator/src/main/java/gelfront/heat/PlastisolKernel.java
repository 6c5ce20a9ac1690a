// SPDX-License-Identifier: Apache-2.0
package gelfront.heat;

import gelfront.base.Workers;
import gelfront.grid.Cavity;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Conduction in the plastisol over one step with frozen capacities and wall temperatures:
 *
 * <pre>  C V dT/dt = sum over faces of k A / d (T_j - T) + sum over walls of U (T_wall - T)</pre>
 *
 * by the second-order Runge-Kutta-Legendre method (Meyer, Balsara and Aslam, J. Comput. Phys. 257
 * (2014) 594): s stages reach (s^2 + s - 2) / 4 times as far as one explicit step.
 *
 * <p>What is staged is the change Y since the step began, for which the method reads, with M the
 * operator without its sources and R the rate at the start,
 *
 * <pre>  Y_j = mu Y_(j-1) + nu Y_(j-2) + mu~ dt M Y_(j-1) + (mu~ + gamma~) dt R</pre>
 *
 * so that a stage passes over four arrays only; walls and uneven faces are few and listed apart.
 */
final class PlastisolKernel {
  /** Cells whose neighbours are copied at once: the copies stay in the first-level cache. */
  private static final int BLOCK = 512;

  /** Share of the stable reach that is used. */
  private static final double SAFETY = 0.95;

  private final Workers workers;
  private final int n;
  private final int[] neighbours;
  private final Cavity cavity;

  /** First cell that is smaller than a voxel. */
  private final int voxels;

  private final double[] volume;

  /** Of its own edge that a cell holds. */
  private final double[] cubes;

  private final int[] wallCells;
  private final int[] wallFrom;

  /** W/m K per cell where it varies, else null. */
  private final double @Nullable [] cellConductivity;

  private final Neighbours[] across = new Neighbours[6];
  private final UnevenFaces uneven;
  private final int[] unevenFrom;
  private final ThreadLocal<double[][]> buffers =
      ThreadLocal.withInitial(() -> new double[8][BLOCK]);

  /** K/s per W times the conductance of a face. */
  private final double[] facePerCapacity;

  private final double[] rate0;

  /** What flows into a cell at a stage, over the conductance of one of its faces; K. */
  private final double[] inflow;

  private final double[] fastest;

  /** Of a cell over that of one of its even faces, where conductivity does not vary; else null. */
  private final double @Nullable [] faces;

  /** 1 over the conductance of a face, per entry of wallCells. */
  private final double[] perWallFace;

  /** K that {@link Curvature} takes off each cell, and what that adds to a cell's inflow. */
  private final double[] bend;

  private final double[] extra;

  private double largeFace;
  private double smallFace;
  private double[] stage1;
  private double[] stage2;
  private int stages;

  /**
   * @param wallCells cells that have a wall, rising
   * @param variable whether conductivity varies with temperature
   */
  PlastisolKernel(Cavity cavity, int[] wallCells, boolean variable, Workers workers) {
    this.workers = workers;
    this.n = cavity.count();
    this.neighbours = cavity.neighbours();
    this.cavity = cavity;
    this.voxels = cavity.voxels();
    this.volume = cavity.volumes();
    this.cubes = new double[n];
    Arrays.setAll(cubes, i -> volume[i] / cavity.cubeVolume(i));
    this.wallCells = wallCells;
    this.cellConductivity = variable ? new double[n] : null;
    for (int f = 0; f < 6; f++) {
      across[f] = new Neighbours(neighbours, f, BLOCK);
    }
    uneven = UnevenFaces.of(cavity);
    wallFrom = firstOfBlocks(wallCells);
    unevenFrom = firstOfBlocks(uneven.cells());
    facePerCapacity = new double[n];
    rate0 = new double[n];
    inflow = new double[n];
    stage1 = new double[n];
    stage2 = new double[n];
    fastest = new double[Workers.chunks(n)];
    perWallFace = new double[wallCells.length];
    faces = variable ? null : faces();
    bend = new double[n];
    extra = new double[n];
  }

  private double[] faces() {
    double[] faces = new double[n];
    for (int e = 0; e < neighbours.length; e++) {
      faces[e / 6] += neighbours[e] == e / 6 ? 0 : 1;
    }
    for (int m = 0; m < uneven.count(); m++) {
      faces[uneven.cell(m)] += uneven.excess(m);
    }
    return faces;
  }

  /** First entry of each block in a rising list of cells, and the list's length at the end. */
  private int[] firstOfBlocks(int[] cells) {
    int[] first = new int[(n + BLOCK - 1) / BLOCK + 1];
    int at = 0;
    for (int block = 0; block < first.length; block++) {
      while (at < cells.length && cells[at] < block * BLOCK) {
        at++;
      }
      first[block] = at;
    }
    return first;
  }

  /** Where conductivity varies: W/m K per cell, filled by the caller before a step; else null. */
  double @Nullable [] cellConductivity() {
    return cellConductivity;
  }

  /** Stages of the last step. */
  int stages() {
    return stages;
  }

  /**
   * Takes the curvature for the steps to come.
   *
   * @param t °C per cell, in the middle of the step
   * @param k W/m K where it does not vary
   * @param wall W/K, sum of U over the walls of a cell, per entry of wallCells
   * @param wallSource W, sum of U T_wall over the walls of a cell, per entry of wallCells
   */
  void curve(double[] t, double k, double[] wall, double[] wallSource) {
    conductances(cellConductivity == null ? k : 1);
    workers.over(n, (a, b) -> bends(t, wall, wallSource, a, b));
    workers.over(n, (a, b) -> extras(t, a, b));
  }

  private void bends(double[] t, double[] wall, double[] source, int from, int to) {
    double[][] buffer = buffers.get();
    for (int a = from; a < to; a += BLOCK) {
      int b = Math.min(to, a + BLOCK);
      inward(t, a, b, buffer);
      for (int w = wallFrom[a / BLOCK]; w < wallFrom[a / BLOCK + 1]; w++) {
        int c = wallCells[w];
        inflow[c] += (source[w] - wall[w] * t[c]) * perWallFace[w];
      }
      for (int i = a; i < b; i++) {
        double over = cellConductivity == null ? 1 : cellConductivity[i];
        bend[i] = Curvature.bend(inflow[i] / over, cubes[i]);
      }
    }
  }

  private void extras(double[] t, int from, int to) {
    double[][] buffer = buffers.get();
    for (int a = from; a < to; a += BLOCK) {
      int b = Math.min(to, a + BLOCK);
      int count = b - a;
      System.arraycopy(t, a, buffer[0], 0, count);
      System.arraycopy(bend, a, buffer[1], 0, count);
      Arrays.fill(buffer[2], 0, count, 0);
      for (int f = 0; f < 6; f++) {
        across[f].copy(t, a, b, buffer[3]);
        across[f].copy(bend, a, b, buffer[4]);
        Curvature.driven(count, buffer[0], buffer[1], buffer[3], buffer[4], buffer[5]);
        add(a, count, f, buffer[5], buffer[2]);
      }
      System.arraycopy(buffer[2], 0, extra, a, count);
    }
  }

  /** Adds what is driven through one face of cells from {@code a} on, by their conductivities. */
  private void add(int a, int count, int face, double[] driven, double[] sum) {
    if (cellConductivity == null) {
      for (int i = 0; i < count; i++) {
        sum[i] += driven[i];
      }
    } else {
      for (int i = 0; i < count; i++) {
        sum[i] += face(a + i, neighbours[6 * (a + i) + face]) * driven[i];
      }
    }
  }

  /**
   * @param t0 °C before; not modified
   * @param capacity J/m3 K per cell
   * @param k W/m K where it does not vary
   * @param wall W/K, sum of U over the walls of a cell, per entry of wallCells
   * @param wallSource W, sum of U T_wall over the walls of a cell, per entry of wallCells
   * @param mean °C, mean over the step as the walls saw it, per entry of wallCells; modified
   * @return K per cell that the step adds; the kernel's own, good until the next step
   */
  double[] step(
      double[] t0,
      double[] capacity,
      double k,
      double[] wall,
      double[] wallSource,
      double dt,
      double[] mean) {
    conductances(cellConductivity == null ? k : 1);
    int s = Legendre.stagesFor(dt / (SAFETY * explicitLimit(capacity, wall)));
    stages = s;
    double w1 = 4.0 / ((double) s * s + s - 2);
    double[] y1 = stage1;
    double[] y2 = stage2;
    double first = w1 / 3 * dt;
    workers.over(n, (a, b) -> begin(t0, wall, wallSource, first, y1, y2, mean, a, b));
    double[] weight = Legendre.meanWeights(s, w1);
    for (int j = 2; j <= s; j++) {
      stage(
          Legendre.mu(j),
          Legendre.nu(j),
          Legendre.mu(j) * w1 * dt,
          Legendre.b(j - 1) * Legendre.mu(j) * w1 * dt,
          wall,
          weight[j],
          mean);
    }
    return stage1;
  }

  /**
   * Of a face between two equal cells, W/K, or metres where conductivity varies.
   *
   * @param k W/m K, or 1 where it varies
   */
  private void conductances(double k) {
    largeFace = k * cavity.grid().spacing();
    smallFace = k * cavity.smallEdge();
    for (int w = 0; w < wallCells.length; w++) {
      perWallFace[w] = 1 / faceOf(wallCells[w]);
    }
  }

  private double faceOf(int i) {
    return i < voxels ? largeFace : smallFace;
  }

  /** s that an explicit step may last: no rate exceeds what a row adds up to (Gershgorin). */
  private double explicitLimit(double[] capacity, double[] wall) {
    workers.over(n, (a, b) -> fastest[a / Workers.CHUNK] = fastest(capacity, wall, a, b));
    return 2 / Arrays.stream(fastest).max().orElseThrow();
  }

  /** 1/s, bound of the fastest rate; fills the capacities. */
  private double fastest(double[] capacity, double[] wall, int from, int to) {
    double most = 0;
    int w = wallFrom[from / BLOCK];
    int m = unevenFrom[from / BLOCK];
    for (int i = from; i < to; i++) {
      double g = faceOf(i);
      double sum = faces == null ? varying(i) : faces[i];
      for (; faces == null && m < uneven.count() && uneven.cell(m) == i; m++) {
        sum += uneven.excess(m) * face(i, uneven.other(m));
      }
      sum *= 2 * g;
      if (w < wallCells.length && wallCells[w] == i) {
        sum += wall[w++];
      }
      double per = 1 / (capacity[i] * volume[i]);
      facePerCapacity[i] = g * per;
      most = Math.max(most, sum * per);
    }
    return most;
  }

  private double varying(int i) {
    double sum = 0;
    for (int f = 0; f < 6; f++) {
      int j = neighbours[6 * i + f];
      sum += j == i ? 0 : face(i, j);
    }
    return sum;
  }

  /** Conductivity between two cells; 1 where it does not vary, being part of g. */
  private double face(int i, int j) {
    if (cellConductivity == null) {
      return 1;
    }
    double own = cellConductivity[i];
    double other = cellConductivity[j];
    return 2 * own * other / (own + other);
  }

  /** The rate at the start, and the first stage. */
  private void begin(
      double[] t0,
      double[] wall,
      double[] source,
      double step,
      double[] y1,
      double[] y2,
      double[] mean,
      int from,
      int to) {
    double[][] buffer = buffers.get();
    for (int a = from; a < to; a += BLOCK) {
      int b = Math.min(to, a + BLOCK);
      inward(t0, a, b, buffer);
      for (int w = wallFrom[a / BLOCK]; w < wallFrom[a / BLOCK + 1]; w++) {
        int c = wallCells[w];
        double own = t0[c];
        inflow[c] += (source[w] - wall[w] * own) * perWallFace[w];
        mean[w] = own;
      }
      for (int i = a; i < b; i++) {
        rate0[i] = facePerCapacity[i] * (inflow[i] + extra[i]);
        y1[i] = step * rate0[i];
        y2[i] = 0;
      }
    }
  }

  private void stage(
      double mu,
      double nu,
      double muStep,
      double rateStep,
      double[] wall,
      double weight,
      double[] mean) {
    double[] y = stage1;
    double[] out = stage2;
    workers.over(
        n,
        (from, to) -> {
          double[][] buffer = buffers.get();
          for (int a = from; a < to; a += BLOCK) {
            int b = Math.min(to, a + BLOCK);
            inward(y, a, b, buffer);
            walls(y, a, wall, weight, mean);
            combine(out, y, inflow, facePerCapacity, rate0, mu, nu, muStep, rateStep, a, b);
          }
        });
    stage1 = out;
    stage2 = y;
  }

  private void walls(double[] y, int a, double[] wall, double weight, double[] mean) {
    for (int w = wallFrom[a / BLOCK]; w < wallFrom[a / BLOCK + 1]; w++) {
      int c = wallCells[w];
      double own = y[c];
      inflow[c] -= perWallFace[w] * wall[w] * own;
      mean[w] += weight * own;
    }
  }

  /** One index for all arrays: other loops are not vectorised by the compiler. */
  private static void combine(
      double[] out,
      double[] y,
      double[] inflow,
      double[] per,
      double[] rate,
      double mu,
      double nu,
      double muStep,
      double rateStep,
      int from,
      int to) {
    for (int i = from; i < to; i++) {
      out[i] = mu * y[i] + nu * out[i] + muStep * per[i] * inflow[i] + rateStep * rate[i];
    }
  }

  /** What flows into cells from their neighbours, over g. */
  private void inward(double[] y, int from, int to, double[][] buffer) {
    if (cellConductivity == null) {
      int count = to - from;
      double[] own = buffer[6];
      double[] sum = buffer[7];
      System.arraycopy(y, from, own, 0, count);
      for (int f = 0; f < 6; f++) {
        across[f].copy(y, from, to, buffer[f]);
      }
      differences(count, own, buffer[0], buffer[1], buffer[2], sum);
      moreDifferences(count, own, buffer[3], buffer[4], buffer[5], sum);
      System.arraycopy(sum, 0, inflow, from, count);
    } else {
      varyingInward(y, from, to);
    }
    for (int m = unevenFrom[from / BLOCK]; m < unevenFrom[from / BLOCK + 1]; m++) {
      int i = uneven.cell(m);
      int j = uneven.other(m);
      inflow[i] += face(i, j) * uneven.excess(m) * (y[j] - y[i]);
    }
  }

  private void varyingInward(double[] y, int from, int to) {
    for (int i = from; i < to; i++) {
      double s = 0;
      for (int f = 0; f < 6; f++) {
        int j = neighbours[6 * i + f];
        s += j == i ? 0 : face(i, j) * (y[j] - y[i]);
      }
      inflow[i] = s;
    }
  }

  private static void differences(
      int count, double[] own, double[] p, double[] q, double[] r, double[] sum) {
    for (int k = 0; k < count; k++) {
      sum[k] = (p[k] - own[k]) + (q[k] - own[k]) + (r[k] - own[k]);
    }
  }

  private static void moreDifferences(
      int count, double[] own, double[] p, double[] q, double[] r, double[] sum) {
    for (int k = 0; k < count; k++) {
      sum[k] = sum[k] + (p[k] - own[k]) + (q[k] - own[k]) + (r[k] - own[k]);
    }
  }
}
