// SPDX-License-Identifier: Apache-2.0
/**
 * How sure a verdict is. In: a case, the material table's ranges, tolerances. Out: plausible cases,
 * drawn by a fixed plan and calculated as a study, and which unknown decides. Statistics here know
 * nothing of plastisol; they take numbers and give numbers.
 */
package gelfront.doubt;
