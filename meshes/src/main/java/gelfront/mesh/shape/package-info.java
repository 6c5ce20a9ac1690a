/** Making closed solids from numbers. Out: outward-wound meshes in metres. */
package gelfront.mesh.shape;
