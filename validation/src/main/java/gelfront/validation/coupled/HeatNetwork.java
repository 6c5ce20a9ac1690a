// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.coupled;

import gelfront.grid.Cavity;
import gelfront.grid.Joints;
import gelfront.grid.MouldCells;
import gelfront.grid.VoxelModel;
import gelfront.heat.Curvature;
import gelfront.heat.MouthFilm;
import gelfront.heat.WallBend;
import gelfront.material.HeatCurves;

/**
 * A voxel model as one network: plastisol cells 0 to n-1, then the mould's. Edges: faces inside the
 * plastisol, wall links, faces inside the mould. Air and mouth are links to the ground.
 *
 * <pre>
 *   plastisol face   k dx / (1 + s),  s the cells' middles further apart than one edge, in edges
 *                    k A / d between cells of two sizes, A the smaller face, d between middles
 *   wall link        1 / (d / (k A) + resistance),  d from the middle to the true wall
 *   mouth            1 / (d / (k A) + 1 / (h |n_d| A))</pre>
 */
final class HeatNetwork {
  private final VoxelModel model;
  private final HeatCurves curves;
  private final float[] shift;
  private final Graph graph;
  private final double[] g;
  private final double[] perConductivity;
  private final int[] wallOf;
  private final int faces;
  private final double[] mouthLink;
  private final WallBend bends;

  HeatNetwork(VoxelModel model, HeatCurves curves) {
    this.model = model;
    this.curves = curves;
    Cavity cavity = model.cavity();
    shift = cavity.shifts();
    int n = cavity.count();
    int most =
        3 * n
            + cavity.refinement().joints().count() / 2
            + cavity.walls().count()
            + 3 * model.mould().count();
    int[] from = new int[most];
    int[] to = new int[most];
    perConductivity = new double[most];
    faces = plastisolFaces(from, to);
    wallOf = new int[cavity.walls().count()];
    int walls = wallLinks(from, to, faces);
    int edges = mouldFaces(from, to, walls);
    graph =
        Graph.of(
            n + model.mould().count(),
            java.util.Arrays.copyOf(from, edges),
            java.util.Arrays.copyOf(to, edges));
    g = java.util.Arrays.copyOf(perConductivity, edges);
    mouthLink = new double[n];
    double[] reach = new double[wallOf.length];
    java.util.Arrays.setAll(reach, this::reach);
    bends = new WallBend(cavity, reach);
  }

  private int plastisolFaces(int[] from, int[] to) {
    int[] neighbours = model.cavity().neighbours();
    int e = 0;
    for (int i = 0; i < neighbours.length; i++) {
      int c = i / 6;
      int j = neighbours[i];
      if (i % 2 == 1 && j != c) {
        int axis = i % 6 / 2;
        from[e] = c;
        to[e] = j;
        double further = shift[3 * j + axis] - shift[3 * c + axis];
        perConductivity[e++] = model.cavity().edge(c) / (1 + further);
      }
    }
    return joints(from, to, e);
  }

  private int joints(int[] from, int[] to, int first) {
    Cavity cavity = model.cavity();
    Joints joints = cavity.refinement().joints();
    double small = cavity.smallEdge();
    int e = first;
    for (int c = 0; c < cavity.voxels(); c++) {
      for (int i = joints.first(c); i < joints.end(c); i++) {
        int j = joints.other()[i];
        from[e] = c;
        to[e] = j;
        perConductivity[e++] = small * small / apart(c, j, joints.face()[i]);
      }
    }
    return e;
  }

  /** Metres along a face's axis from a cell's middle to that of the one across it. */
  private double apart(int c, int j, int face) {
    Cavity cavity = model.cavity();
    double moved =
        cavity.edge(j) * shift[3 * j + face / 2] - cavity.edge(c) * shift[3 * c + face / 2];
    return 0.5 * (cavity.edge(c) + cavity.edge(j)) + (face % 2 == 0 ? -moved : moved);
  }

  private int wallLinks(int[] from, int[] to, int first) {
    Cavity.Walls walls = model.cavity().walls();
    int e = first;
    for (int w = 0; w < walls.count(); w++) {
      if (model.mouldCell()[w] >= 0) {
        from[e] = walls.cell()[w];
        to[e] = model.cavity().count() + model.mouldCell()[w];
        wallOf[e++ - first] = w;
      }
    }
    return e;
  }

  private int mouldFaces(int[] from, int[] to, int first) {
    MouldCells mould = model.mould();
    int n = model.cavity().count();
    int e = first;
    for (int i = 0; i < mould.neighbour().length; i++) {
      if (mould.neighbour()[i] >= 0) {
        from[e] = n + i / 3;
        to[e] = n + mould.neighbour()[i];
        perConductivity[e++] = mould.conductance()[i];
      }
    }
    return e;
  }

  Graph graph() {
    return graph;
  }

  /**
   * W into each cell by what straight differences leave out; the solver's own corrections, so that
   * the two differ in how they step and couple alone. As of the last {@link #conduct}.
   *
   * @param t °C per cell in the middle of the step
   * @return W that leaves through the mouth by it
   */
  double curve(double[] t, MouthFilm mouth, double[] ground, double[] out) {
    Cavity cavity = model.cavity();
    Cavity.Walls walls = cavity.walls();
    int n = cavity.count();
    double[] inflow = new double[out.length];
    fluxes(t, ground, mouth, inflow);
    java.util.Arrays.fill(out, 0);
    double left = 0;
    int edge = faces;
    for (int w = 0; w < walls.count(); w++) {
      int c = walls.cell()[w];
      boolean open = model.mouldCell()[w] < 0;
      double u = open ? mouthConductance(w, mouth, t) : g[edge];
      int beyond = open ? -1 : graph.to()[edge++];
      double fall = t[c] - (open ? mouth.temperature() : t[beyond]);
      bends.take(w, t, fall, u, curves.conductivity(t[c]));
      double in = u * bends.at(w);
      out[c] += in;
      left -= open ? in : 0;
      if (!open) {
        out[beyond] -= in;
      }
    }
    double[] bend = new double[n];
    double[] volume = cavity.volumes();
    for (int c = 0; c < n; c++) {
      double face = curves.conductivity(t[c]) * cavity.edge(c);
      bend[c] = Curvature.bend((inflow[c] + out[c]) / face, volume[c] / cavity.cubeVolume(c));
    }
    between(t, bend, out);
    return left;
  }

  private void between(double[] t, double[] bend, double[] out) {
    Cavity cavity = model.cavity();
    for (int c = 0; c < bend.length; c++) {
      for (int f = 0; f < 6; f++) {
        int j = cavity.neighbours()[6 * c + f];
        if (j != c) {
          double a = curves.conductivity(t[c]);
          double b = curves.conductivity(t[j]);
          double face = 2 * a * b / (a + b) * cavity.edge(c);
          out[c] += face * Curvature.driven(t[c], bend[c], t[j], bend[j]);
        }
      }
    }
  }

  private double mouthConductance(int w, MouthFilm mouth, double[] t) {
    Cavity.Walls walls = model.cavity().walls();
    if (!(mouth.film() > 0)) {
      return 0;
    }
    double k = curves.conductivity(t[walls.cell()[w]]);
    double film = mouth.film() * walls.cosine()[w];
    return walls.edge()[w] * walls.edge()[w] / (reach(w) / k + 1 / film);
  }

  /** W/K per edge as of the last {@link #conduct}. */
  double[] conductances() {
    return g;
  }

  /** Whether conductances do not change from one {@link #conduct} to the next. */
  boolean constant() {
    return curves.constantConductivity();
  }

  /** Kind, i, j, k of each cell, 4 by turns. */
  int[] places() {
    Cavity cavity = model.cavity();
    int n = cavity.count();
    int[] places = new int[4 * graph.nodes()];
    for (int i = 0; i < graph.nodes(); i++) {
      places[4 * i] = i >= n ? 1 : i < cavity.voxels() ? 0 : 2;
      for (int a = 0; a < 3; a++) {
        places[4 * i + 1 + a] =
            i < n
                ? (int)
                    Math.floor(
                        (cavity.place(i, a) + 0.5)
                            * (i < cavity.voxels() ? 1 : cavity.refinement().factor()))
                : model.mould().grid().position(model.mould().cells()[i - n], a);
      }
    }
    return places;
  }

  /** Metres along the wall's axis from the middle of its cell's true volume to the wall. */
  private double reach(int w) {
    Cavity.Walls walls = model.cavity().walls();
    int face = walls.face()[w];
    double outwards = face % 2 == 0 ? -1 : 1;
    double edge = model.cavity().edge(walls.cell()[w]);
    return walls.distance()[w] - outwards * edge * shift[3 * walls.cell()[w] + face / 2];
  }

  /** Sets the conductances of plastisol faces and wall links to those at temperatures t. */
  void conduct(double[] t) {
    for (int e = 0; e < faces; e++) {
      double a = curves.conductivity(t[graph.from()[e]]);
      double b = curves.conductivity(t[graph.to()[e]]);
      g[e] = perConductivity[e] * 2 * a * b / (a + b);
    }
    for (int e = faces; e < g.length && graph.from()[e] < model.cavity().count(); e++) {
      int w = wallOf[e - faces];
      double k = curves.conductivity(t[graph.from()[e]]);
      double edge = model.cavity().walls().edge()[w];
      g[e] = 1 / (reach(w) / (k * edge * edge) + model.resistance()[w]);
    }
  }

  /** W/K from each cell to air or mouth; the mouth's by {@code t} where conductivity varies. */
  void ground(MouthFilm mouth, double[] t, double[] out) {
    Cavity.Walls walls = model.cavity().walls();
    java.util.Arrays.fill(mouthLink, 0);
    for (int w = 0; w < walls.count() && mouth.film() > 0; w++) {
      if (model.mouldCell()[w] < 0) {
        mouthLink[walls.cell()[w]] += mouthConductance(w, mouth, t);
      }
    }
    int n = mouthLink.length;
    System.arraycopy(mouthLink, 0, out, 0, n);
    System.arraycopy(model.mould().airConductance(), 0, out, n, graph.nodes() - n);
  }

  /** W into each cell from the others and the ground, at temperatures t. */
  void fluxes(double[] t, double[] ground, MouthFilm mouth, double[] out) {
    int n = model.cavity().count();
    double[] air = model.mould().airTemperature();
    for (int i = 0; i < out.length; i++) {
      out[i] = ground[i] * ((i < n ? mouth.temperature() : air[i - n]) - t[i]);
    }
    graph.addFluxes(g, t, out);
  }
}
