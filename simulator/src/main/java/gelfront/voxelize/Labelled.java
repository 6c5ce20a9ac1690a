// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.Cavity;
import gelfront.mesh.TriangleMesh;

/**
 * A solid and what it is.
 *
 * @param region its cells belong to, where no earlier solid claims them
 * @param mesh closed, outward-wound; overlapping shells count as united
 */
public record Labelled(Cavity.Region region, TriangleMesh mesh) {}
