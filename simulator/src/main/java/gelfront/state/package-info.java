// SPDX-License-Identifier: Apache-2.0
/**
 * The one mutable bag of a run. Who may write what:
 *
 * <table>
 * <caption>Writers</caption>
 * <tr><th>field</th><th>writer</th></tr>
 * <tr><td>time, temperature, previous, enthalpy, mould, ledger</td><td>the heat stepper</td></tr>
 * <tr><td>lostContact</td><td>who watches where the skin leaves the wall</td></tr>
 * <tr><td>mould, before a shot</td><td>the row of shots that it follows</td></tr>
 * </table>
 */
package gelfront.state;
