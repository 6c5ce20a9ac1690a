/** Engine meshes of what the model says. */
package gelfront.viewer.scene;
