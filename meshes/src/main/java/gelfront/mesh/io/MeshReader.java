// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import java.util.Optional;

/** Reads one kind of mesh file. Extension point. */
public interface MeshReader {
  /** Whether the content looks like this reader's, judged by all of it. */
  boolean claims(byte[] content);

  /**
   * @param content all of the file
   * @param stated the unit that the user gave; absent: the file's own, else millimetres
   * @return in metres, corners with equal coordinates merged, with notes on what was odd
   * @throws gelfront.mesh.MeshException with the place, without the file's name
   */
  RawMesh read(byte[] content, Optional<LengthUnit> stated);

  /** Metres of a unit for files that don't state their own. */
  static double metres(Optional<LengthUnit> stated) {
    return stated.orElse(LengthUnit.MM).metres();
  }
}
