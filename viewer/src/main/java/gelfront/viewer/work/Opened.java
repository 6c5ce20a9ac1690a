// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.answer.VoxelDoubt;
import gelfront.mesh.TriangleMesh;
import gelfront.result.StoredRun;
import gelfront.setup.StarterGuess;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** What came of a file that was to be opened. */
public sealed interface Opened {
  /**
   * A case, with its part.
   *
   * @param project to work on
   * @param unit that was guessed for a mesh that came without a case; absent: nothing was guessed
   * @param notes in words: repairs, guesses
   */
  record ACase(Project project, Optional<StarterGuess.Unit> unit, List<String> notes)
      implements Opened {}

  /**
   * A stored result.
   *
   * @param project its case, where the part's mesh is still where the case says
   * @param voxels how far its verdict hangs on their size, where that was compared
   */
  record AResult(Path folder, StoredRun run, Optional<Project> project, Optional<VoxelDoubt> voxels)
      implements Opened {}

  /**
   * A mesh that can't be used, as it is.
   *
   * @param mesh metres
   * @param why in words
   */
  record ABrokenMesh(Path file, TriangleMesh mesh, List<String> why) implements Opened {}

  /** Nothing that could be opened; {@code why} in one sentence. */
  record Nothing(Path file, String why) implements Opened {
    /** With the file's name, once. */
    public String line() {
      return why.contains(String.valueOf(file)) ? why : file + ": " + why;
    }
  }
}
