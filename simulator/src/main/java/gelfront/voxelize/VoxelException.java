package gelfront.voxelize;

/** Shape and feed system can't be made into a sound voxel model; the message says why and where. */
public final class VoxelException extends RuntimeException {
  public VoxelException(String message) {
    super(message);
  }
}
