// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

import com.jme3.scene.Node;
import gelfront.viewer.model.Extent;
import gelfront.viewer.model.Look;

/** Something that a side of the picture shows. */
interface Exhibit {
  Node node();

  Extent extent();

  /** Makes what a look needs and isn't there yet: not on the engine's thread, one at a time. */
  void prepare(Look look);

  /** Puts the scene as the look wants it; engine's thread, after {@link #prepare}. */
  void apply(Look look, Labels labels);
}
