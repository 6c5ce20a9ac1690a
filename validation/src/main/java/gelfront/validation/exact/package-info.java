// SPDX-License-Identifier: Apache-2.0
/**
 * Closed forms of heat conduction. Each class opens with its equations and their textbook home;
 * formulas are from memory and checked against published digits by the tests beside them.
 */
package gelfront.validation.exact;
