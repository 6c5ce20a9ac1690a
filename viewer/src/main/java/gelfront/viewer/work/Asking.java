// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.base.Progress;
import gelfront.mesh.TriangleMesh;
import gelfront.setup.LoadedCase;

/** What is asked about a design, on a thread of its own. */
public interface Asking {
  /**
   * @param part of the case, metres
   * @throws IllegalArgumentException with why there is no answer, in words
   */
  Help answer(LoadedCase loaded, TriangleMesh part, Backgrounds threads, Progress progress);
}
