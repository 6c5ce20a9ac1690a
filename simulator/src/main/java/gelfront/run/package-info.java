// SPDX-License-Identifier: Apache-2.0
/** The loop that owns time. In: a case in voxels. Out: what its observers saw, and a stored run. */
package gelfront.run;
