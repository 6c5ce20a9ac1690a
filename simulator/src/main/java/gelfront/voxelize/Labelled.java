// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.Cavity;
import gelfront.mesh.TriangleMesh;

/**
 * A solid and what it is.
 *
 * @param region its cells belong to, where no earlier solid claims them
 * @param mesh closed, outward-wound; overlapping shells count as united
 * @param width of a channel where it is narrowest, metres; infinite for what is none
 */
public record Labelled(Cavity.Region region, TriangleMesh mesh, double width) {
  /** One that is no channel. */
  public Labelled(Cavity.Region region, TriangleMesh mesh) {
    this(region, mesh, Double.POSITIVE_INFINITY);
  }

  Resolution.Channel channel() {
    return new Resolution.Channel(mesh.box(), width);
  }
}
