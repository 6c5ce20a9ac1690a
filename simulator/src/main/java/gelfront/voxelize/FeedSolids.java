// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.mesh.TriangleMesh;
import gelfront.setup.Case;
import gelfront.setup.FeedSystem;
import java.util.ArrayList;
import java.util.List;

/** A declared feed system as a mesh, to be handed to CAD. */
public final class FeedSolids {
  private FeedSolids() {}

  /**
   * Gates, runners, reservoirs and sprue as closed, outward-wound shells in the part's coordinates,
   * metres. They reach into each other and into the part, so that a union joins them.
   *
   * @param part the part's mesh, closed
   * @throws VoxelException if the gate does not meet the part, or a runner meets what it must not
   */
  public static TriangleMesh of(Case c, FeedSystem.Declared feed, TriangleMesh part) {
    List<TriangleMesh> parts = new ArrayList<>(List.of(part));
    c.copies().forEach(p -> parts.add(p.of(part)));
    return FeedShapes.of(feed, parts, c.copies()).solids().stream()
        .map(Labelled::mesh)
        .reduce(TriangleMesh::plus)
        .orElseThrow();
  }
}
