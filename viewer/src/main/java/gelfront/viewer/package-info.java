// SPDX-License-Identifier: Apache-2.0
/** The window on a stored run. Knows results, no solver. */
package gelfront.viewer;
