// SPDX-License-Identifier: Apache-2.0
/** Plain data that solver, report and viewer share: pocket, dent, constriction, verdict. */
package gelfront.finding;
