// SPDX-License-Identifier: Apache-2.0
/**
 * The judge of the fast heat stepper: the same equation on the same cells and wall links, solved
 * fully coupled and implicitly. In: a voxel model, usually with a mould as fine as the part. Out: a
 * {@code HeatStepper} that is slow and owes nothing to the fast one's scheme.
 */
package gelfront.validation.coupled;
