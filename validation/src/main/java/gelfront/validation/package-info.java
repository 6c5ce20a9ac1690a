// SPDX-License-Identifier: Apache-2.0
/**
 * The solvers held against the outside world. In: closed forms, and numbers got by other means.
 * Out: small harnesses that the tests of this module drive; nothing else uses it.
 */
package gelfront.validation;
