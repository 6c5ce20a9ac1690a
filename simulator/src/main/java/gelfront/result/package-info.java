// SPDX-License-Identifier: Apache-2.0
/**
 * What a run leaves. In: findings, series, fields, provenance. Out: a folder that is complete or
 * not there, readable without a solver.
 */
package gelfront.result;
