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
 * heat from the middle of its cell, s along its normal, by the film h of the side that it looks to:
 *
 * <pre>  A / (1 / h + s / k)</pre>
 *
 * <p>A cell whose middle lies in the air has s below zero, down to half of what the film resists:
 * half a cell's width instead made a channel's flux up to 14 % too small.
 *
 * <p>The wall of a coolant channel does so by the channel's own film, wherever it has metal behind.
 */
final class OutsideFilm {
  /** Longest edge of a piece, metres. */
  private static final double PIECE = 1.5e-3;

  /** Normals by which a piece counts as parallel to a side. */
  private static final double ALONG = 0.99;

  /** Strips round a channel at least. */
  private static final int ROUND = 24;

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
    block.channels().forEach(film::channel);
    return film;
  }

  /** Strips along its wall, each cut into short pieces. */
  private void channel(Block.Channel c) {
    Vec3 way = c.to().minus(c.from());
    Vec3 d = way.unit();
    Vec3 u = d.cross(Math.abs(d.x()) < 0.9 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0)).unit();
    Vec3 v = d.cross(u);
    double r = 0.5 * c.diameter();
    int round = Math.max(ROUND, (int) Math.ceil(2 * Math.PI * r / PIECE));
    int pieces = (int) Math.ceil(way.length() / PIECE);
    double area = 2 * Math.PI * r / round * way.length() / pieces;
    for (int s = 0; s < round; s++) {
      double angle = 2 * Math.PI * (s + 0.5) / round;
      Vec3 out = u.times(Math.cos(angle)).plus(v.times(Math.sin(angle)));
      for (int k = 0; k < pieces; k++) {
        Vec3 p = c.from().plus(way.times((k + 0.5) / pieces)).plus(out.times(r));
        if (outside.at(p) >= 0) {
          lose(p, out.times(-1), area, c.film(), c.temperature());
        }
      }
    }
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
    boolean bare = before < 0 ? !onSide(middle, n) : open[before];
    if (bare && block.channels().stream().noneMatch(h -> drilled(h, middle))) {
      Block.Face to = block.face(new Side(axis(n), along(n, axis(n)) > 0));
      lose(middle, n, area, to.film(), to.temperature());
    }
  }

  /** A channel that the solids show, too, loses its heat to the coolant alone. */
  private boolean drilled(Block.Channel c, Vec3 p) {
    return c.distance(p) < 0.5 * c.diameter() + outside.spacing();
  }

  private static double along(Vec3 p, int axis) {
    return axis == 0 ? p.x() : axis == 1 ? p.y() : p.z();
  }

  /** The axis that a direction lies nearest to. */
  private static int axis(Vec3 n) {
    int most = Math.abs(n.x()) >= Math.abs(n.y()) ? 0 : 1;
    return Math.abs(along(n, most)) >= Math.abs(n.z()) ? most : 2;
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

  private void lose(Vec3 middle, Vec3 n, double area, double film, double temperature) {
    for (int k = 0; k < DEEP; k++) {
      Vec3 p = middle.minus(n.times((k + 0.5) * outside.spacing()));
      int cell = grid.index(grid.find(0, p.x()), grid.find(1, p.y()), grid.find(2, p.z()));
      if (volume[cell] > 0) {
        double off = middle.minus(grid.centre(cell)).dot(n) / conductivity[cell];
        double g = film > 0 ? area / (1 / film + Math.max(off, -0.5 / film)) : 0;
        conductance[cell] += g;
        heat[cell] += g * temperature;
        return;
      }
    }
  }
}
