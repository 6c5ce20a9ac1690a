/** The window on a stored run. Knows results, no solver. */
package gelfront.viewer;
