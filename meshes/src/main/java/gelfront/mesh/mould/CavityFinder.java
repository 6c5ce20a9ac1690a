// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.mould;

import gelfront.mesh.Box;
import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Finds what is poured in a mould of two or more solids: the air in their common box that is not
 * metal falls into hollows; the one with the stated opening is the cavity, or else the largest that
 * reaches the outside. Slits between two solids along a lattice's axis, up to a stated width, are
 * taken for closed: so the air is stopped at the parting plane.
 */
public final class CavityFinder {
  /** Of a side of the mould's box: no pour opening is as wide. */
  private static final double WIDEST = 0.3;

  private final List<TriangleMesh> solids;
  private final Lattice lattice;
  private final Crossings[] lines = new Crossings[3];
  private final int[] hollow;
  private final List<Double> volumes = new ArrayList<>();

  private CavityFinder(List<TriangleMesh> solids, double spacing, double slit) {
    this.solids = solids;
    Box box = solids.get(0).box();
    for (TriangleMesh m : solids) {
      box = box.union(m.box());
    }
    lattice = Lattice.of(box, spacing);
    boolean[] metal = new boolean[lattice.count()];
    for (int axis = 0; axis < 3; axis++) {
      lines[axis] = new Crossings(lattice, axis, this.solids);
      lines[axis].mark(metal, slit);
    }
    hollow = new int[metal.length];
    for (int s = 0; s < metal.length; s++) {
      hollow[s] = metal[s] ? -1 : 0;
    }
    flood();
  }

  /**
   * @param solids of the mould, each closed and wound outwards, put together; metres
   * @param spacing of the samples, metres; what is thinner than two of them may be missed
   * @param slit widest gap between two solids that counts as closed, metres
   * @param opening near which the mould is poured; absent: found
   * @throws MeshException with the reason, if there is no cavity that reaches the outside
   * @throws IllegalArgumentException if the spacing takes too many samples
   */
  public static MouldCavity find(
      List<TriangleMesh> solids, double spacing, double slit, Optional<Vec3> opening) {
    if (solids.isEmpty()) {
      throw new MeshException("a mould needs one solid at least");
    }
    return new CavityFinder(solids, spacing, slit).find(opening);
  }

  /** Numbers hollows from 1. */
  private void flood() {
    int[] stack = new int[hollow.length];
    for (int seed = 0; seed < hollow.length; seed++) {
      if (hollow[seed] != 0) {
        continue;
      }
      int number = volumes.size() + 1;
      int n = 0;
      int depth = 0;
      stack[depth++] = seed;
      hollow[seed] = number;
      while (depth > 0) {
        int s = stack[--depth];
        n++;
        for (int side = 0; side < 6; side++) {
          int next = next(s, side);
          if (next >= 0 && hollow[next] == 0) {
            hollow[next] = number;
            stack[depth++] = next;
          }
        }
      }
      volumes.add(n * lattice.cell());
    }
  }

  /** Neighbour on side 2 axis (low) or 2 axis + 1 (high); -1 outside the box. */
  private int next(int s, int side) {
    int axis = side / 2;
    int p = lattice.position(s, axis);
    boolean up = side % 2 == 1;
    boolean end = up ? p == lattice.n()[axis] - 1 : p == 0;
    return end ? -1 : s + (up ? 1 : -1) * lattice.stride(axis);
  }

  private MouldCavity find(Optional<Vec3> stated) {
    List<Patch> patches = patches();
    if (patches.isEmpty()) {
      throw new MeshException(
          volumes.isEmpty()
              ? "the mould's solids leave no hollow: is there more than one, and are they closed?"
              : "no hollow of the mould reaches its outside: there is no pour opening");
    }
    Comparator<Patch> order =
        stated.isPresent()
            ? Comparator.comparingDouble(p -> p.opening.centre().distance(stated.get()))
            : Comparator.comparingDouble((Patch p) -> -volumes.get(p.hollow - 1))
                .thenComparingDouble(p -> -p.opening.area());
    Patch pour = patches.stream().min(order).orElseThrow();
    checkClosed(pour.hollow, patches);
    checkWhole(pour.opening);
    List<MouldCavity.Opening> vents =
        patches.stream()
            .filter(p -> p.hollow == pour.hollow && !p.equals(pour))
            .sorted(Comparator.comparingDouble(p -> -p.opening.area()))
            .map(p -> p.opening)
            .toList();
    List<Double> leftOut = new ArrayList<>(volumes);
    leftOut.remove(pour.hollow - 1);
    boolean[] inside = new boolean[hollow.length];
    for (int s = 0; s < inside.length; s++) {
      inside[s] = hollow[s] == pour.hollow;
    }
    return new MouldCavity(
        new Hollow(lattice, lines, inside).mesh(), lattice.box(), pour.opening, vents, leftOut);
  }

  /**
   * A hollow that opens on much of the block's sides is the gap between halves that stand apart.
   */
  private void checkClosed(int number, List<Patch> patches) {
    long sides =
        patches.stream()
            .filter(p -> p.hollow == number)
            .map(p -> p.opening.side())
            .distinct()
            .count();
    if (sides >= 4) {
      throw new MeshException(
          "the mould is open on "
              + sides
              + " sides: do its parts stand apart? Put them together, or state a wider slit");
    }
  }

  private void checkWhole(MouldCavity.Opening pour) {
    int axis = "xyz".indexOf(pour.side().charAt(1));
    int u = (axis + 1) % 3;
    int v = (axis + 2) % 3;
    double side = (lattice.high(u) - lattice.low(u)) * (lattice.high(v) - lattice.low(v));
    if (pour.area() > WIDEST * side) {
      throw new MeshException(
          String.format(
              Locale.ROOT,
              "the pour opening would be %.0f %% of side %s: is a part of the mould missing?",
              100 * pour.area() / side,
              pour.side()));
    }
  }

  private record Patch(int hollow, MouldCavity.Opening opening) {}

  /** Connected air on the box's sides. */
  private List<Patch> patches() {
    List<Patch> found = new ArrayList<>();
    for (int side = 0; side < 6; side++) {
      boolean[] seen = new boolean[hollow.length];
      for (int s = 0; s < hollow.length; s++) {
        if (hollow[s] > 0 && next(s, side) < 0 && !seen[s]) {
          found.add(patch(s, side, seen));
        }
      }
    }
    return found;
  }

  private Patch patch(int seed, int side, boolean[] seen) {
    int[] stack = new int[256];
    int depth = 0;
    stack[depth++] = seed;
    seen[seed] = true;
    Vec3 sum = Vec3.ZERO;
    int n = 0;
    while (depth > 0) {
      int s = stack[--depth];
      sum = sum.plus(lattice.place(s));
      n++;
      for (int way = 0; way < 6; way++) {
        int next = way / 2 == side / 2 ? -1 : next(s, way);
        if (next >= 0 && hollow[next] == hollow[seed] && !seen[next]) {
          seen[next] = true;
          stack = depth == stack.length ? Arrays.copyOf(stack, 2 * depth) : stack;
          stack[depth++] = next;
        }
      }
    }
    String name = (side % 2 == 1 ? "+" : "-") + "xyz".charAt(side / 2);
    Vec3 centre = onSide(sum.times(1.0 / n), side);
    return new Patch(
        hollow[seed], new MouldCavity.Opening(centre, n * lattice.face(side / 2), name));
  }

  private Vec3 onSide(Vec3 p, int side) {
    int axis = side / 2;
    double at = side % 2 == 1 ? lattice.high(axis) : lattice.low(axis);
    return new Vec3(axis == 0 ? at : p.x(), axis == 1 ? at : p.y(), axis == 2 ? at : p.z());
  }
}
