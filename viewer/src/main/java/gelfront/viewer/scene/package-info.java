// SPDX-License-Identifier: Apache-2.0
/** Engine meshes of what the model says. */
package gelfront.viewer.scene;
