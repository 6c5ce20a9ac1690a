package gelfront.voxelize;

import gelfront.mesh.Vec3;

/**
 * A gate.
 *
 * @param middle metres
 * @param width its narrowest, metres
 */
public record GatePlace(Vec3 middle, double width) {}
