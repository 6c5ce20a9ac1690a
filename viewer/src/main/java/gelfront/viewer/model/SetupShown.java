// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.List;
import java.util.Optional;

/**
 * A part before it is calculated, ready to be drawn.
 *
 * @param part its skin
 * @param extent round all that is drawn
 * @param feed gate, runner and sprue; absent where they are in the mesh or can't be drawn
 * @param block the mould's outside
 * @param channels for a coolant, to be seen through
 * @param faults of the mesh
 * @param gates where they meet the part, the first one first; none where the case declares none
 * @param says words beside the first gate, or the part, a line each; empty: none
 */
public record SetupShown(
    SkinMesh part,
    Extent extent,
    Optional<SkinMesh> feed,
    Optional<MouldShown> block,
    List<SkinMesh> channels,
    MeshFaults faults,
    List<Gate> gates,
    List<String> says) {
  public SetupShown {
    channels = List.copyOf(channels);
    gates = List.copyOf(gates);
    says = List.copyOf(says);
  }

  /**
   * @param at mm
   * @param direction away from the part, length one
   * @param size mm
   */
  public record Gate(Vec3 at, Vec3 direction, double size) {}

  /** A mesh that can't be used, with what is wrong drawn on it. */
  public static SetupShown broken(TriangleMesh mesh, List<String> says) {
    return new SetupShown(
        SkinMesh.of(mesh),
        Extent.of(mesh.box()),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        MeshFaults.of(mesh),
        List.of(),
        says);
  }

  /** The same with other words. */
  public SetupShown saying(List<String> words) {
    return new SetupShown(part, extent, feed, block, channels, faults, gates, words);
  }
}
