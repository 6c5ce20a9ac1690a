// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.check;

import gelfront.mesh.Box;
import java.util.List;

/**
 * What was found out about a mesh.
 *
 * @param triangles number
 * @param box round it, metres
 * @param volume m3, the sum of the shells' signed volumes as they are wound: more than they fill
 *     together where they overlap
 * @param area m2
 * @param closed whether every edge has an even number of triangles
 * @param openEdges edges with an odd number of triangles
 * @param holes closed loops of open edges
 * @param shells connected pieces
 * @param zeroArea triangles without area
 * @param duplicates triangles that repeat another
 * @param overlaps pairs of shells that overlap or lie in one another, by number from 1; not looked
 *     for among more than 200 shells, which the reasons say
 * @param verdict whether it can be used as it is
 * @param reasons for the verdict, in words with places in millimetres
 */
public record MeshReport(
    int triangles,
    Box box,
    double volume,
    double area,
    boolean closed,
    int openEdges,
    int holes,
    List<Shell> shells,
    int zeroArea,
    int duplicates,
    List<int[]> overlaps,
    Verdict verdict,
    List<String> reasons) {
  /** How far a mesh can be trusted. */
  public enum Verdict {
    OK,
    WARNING,
    REFUSED
  }

  /** How a shell's triangles face. */
  public enum Winding {
    OUTWARD,
    INWARD,
    /** Neighbours face opposite ways. */
    SHUFFLED
  }

  /**
   * A connected piece.
   *
   * @param triangles number
   * @param volume signed, m3
   * @param closed whether it has no open edge
   * @param winding how it faces
   */
  public record Shell(int triangles, double volume, boolean closed, Winding winding) {}

  public MeshReport {
    shells = List.copyOf(shells);
    overlaps = List.copyOf(overlaps);
    reasons = List.copyOf(reasons);
  }

  /** Whether there are so many shells that overlaps were not looked for. */
  public boolean overlapsUnknown() {
    return shells.size() > MeshCheck.MANY;
  }
}
