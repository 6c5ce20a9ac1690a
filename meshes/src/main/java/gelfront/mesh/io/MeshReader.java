package gelfront.mesh.io;

import gelfront.mesh.TriangleMesh;

/** Reads one kind of mesh file. Extension point. */
public interface MeshReader {
  /** Whether the content looks like this reader's, judged by all of it. */
  boolean claims(byte[] content);

  /**
   * @param content all of the file
   * @param metres length of the file's unit
   * @return in metres, corners with equal coordinates merged
   * @throws gelfront.mesh.MeshException with the place, without the file's name
   */
  TriangleMesh read(byte[] content, double metres);
}
