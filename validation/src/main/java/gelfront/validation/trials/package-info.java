// SPDX-License-Identifier: Apache-2.0
/**
 * Trial shots made by another model: the network of cooled tubes says when gates close for a known
 * no-flow temperature, and the tool's calibration has to find that temperature. In: trials.json,
 * written by {@code TrialsRun}. Promised: nothing else uses it.
 */
package gelfront.validation.trials;
