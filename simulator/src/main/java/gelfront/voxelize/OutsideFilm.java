// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.RectilinearGrid;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.setup.Block;
import gelfront.setup.Side;

/**
 * What the mould's solids lose to the air inside the block's box: where a corner is milled off, in
 * holes and channels that reach the outside. Each small piece of such a surface, area A, gives its
 * heat from the middle of its cell, half a width w off, by the film h of the side that it looks to:
 *
 * <pre>  A / (1 / h + w / (2 k))</pre>
 */
final class OutsideFilm {
  /** Longest edge of a piece, metres. */
  private static final double PIECE = 1.5e-3;

  /** Normals by which a piece counts as parallel to a side. */
  private static final double ALONG = 0.99;

  /** How deep, in samples, a piece looks for a cell with metal. */
  private static final int DEEP = 16;

  private final RectilinearGrid grid;
  private final Outside outside;
  private final boolean[] open;
  private final double[] volume;
  private final double[] conductivity;
  private final Block block;
  private final double[] conductance;
  private final double[] heat;

  private OutsideFilm(
      RectilinearGrid grid, Outside outside, double[] volume, double[] conductivity, Block block) {
    this.grid = grid;
    this.outside = outside;
    this.open = outside.open();
    this.volume = volume;
    this.conductivity = conductivity;
    this.block = block;
    this.conductance = new double[volume.length];
    this.heat = new double[volume.length];
  }

  /**
   * @param volume m3 of metal in each mould grid cell
   * @param conductivity W/m K of each
   */
  static OutsideFilm of(
      TriangleMesh solids,
      RectilinearGrid grid,
      Outside outside,
      double[] volume,
      double[] conductivity,
      Block block) {
    OutsideFilm film = new OutsideFilm(grid, outside, volume, conductivity, block);
    for (int t = 0; t < solids.triangleCount(); t++) {
      film.split(
          solids.vertex(solids.corner(t, 0)),
          solids.vertex(solids.corner(t, 1)),
          solids.vertex(solids.corner(t, 2)));
    }
    return film;
  }

  /** W/K of a mould grid cell. */
  double conductance(int cell) {
    return conductance[cell];
  }

  /** W/K times °C of what is outside. */
  double heat(int cell) {
    return heat[cell];
  }

  /** Halves the longest edge until it is short. */
  private void split(Vec3 a, Vec3 b, Vec3 c) {
    double ab = a.distance(b);
    double bc = b.distance(c);
    double ca = c.distance(a);
    double longest = Math.max(ab, Math.max(bc, ca));
    if (longest <= PIECE) {
      piece(a, b, c);
    } else if (longest == ab) {
      halves(a, b, c);
    } else if (longest == bc) {
      halves(b, c, a);
    } else {
      halves(c, a, b);
    }
  }

  private void halves(Vec3 a, Vec3 b, Vec3 c) {
    Vec3 m = a.plus(b).times(0.5);
    split(a, m, c);
    split(m, b, c);
  }

  private void piece(Vec3 a, Vec3 b, Vec3 c) {
    Vec3 twice = b.minus(a).cross(c.minus(a));
    double area = 0.5 * twice.length();
    if (area == 0) {
      return;
    }
    Vec3 n = twice.unit();
    Vec3 middle = a.plus(b).plus(c).times(1.0 / 3);
    int before = outside.at(middle.plus(n.times(Math.max(Outside.SLIT, outside.spacing()))));
    if (before < 0 ? !onSide(middle, n) : open[before]) {
      lose(middle, n, area);
    }
  }

  /** Whether it lies in a side of the block's box, where its cell's own face is the outside. */
  private boolean onSide(Vec3 p, Vec3 n) {
    double[] at = {p.x(), p.y(), p.z()};
    double[] d = {n.x(), n.y(), n.z()};
    for (int a = 0; a < 3; a++) {
      double off = d[a] > 0 ? grid.edge(a, grid.count(a)) - at[a] : at[a] - grid.edge(a, 0);
      if (Math.abs(d[a]) > ALONG && off < 0.5 * outside.spacing()) {
        return true;
      }
    }
    return false;
  }

  private void lose(Vec3 middle, Vec3 n, double area) {
    for (int k = 0; k < DEEP; k++) {
      Vec3 p = middle.minus(n.times((k + 0.5) * outside.spacing()));
      int cell = grid.index(grid.find(0, p.x()), grid.find(1, p.y()), grid.find(2, p.z()));
      if (volume[cell] > 0) {
        double[] d = {n.x(), n.y(), n.z()};
        int most = Math.abs(d[0]) >= Math.abs(d[1]) ? 0 : 1;
        int axis = Math.abs(d[most]) >= Math.abs(d[2]) ? most : 2;
        Block.Face to = block.face(new Side(axis, d[axis] > 0));
        double half = 0.5 * grid.width(axis, grid.position(cell, axis)) / conductivity[cell];
        double g = to.film() > 0 ? area / (1 / to.film() + half) : 0;
        conductance[cell] += g;
        heat[cell] += g * to.temperature();
        return;
      }
    }
  }
}
