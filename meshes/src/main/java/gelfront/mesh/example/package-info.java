// SPDX-License-Identifier: Apache-2.0
/**
 * The example parts, made by code and stored as STL beside their case files. All lie along x,
 * centred on y = z = 0, nose at x = 0, millimetres unless said.
 *
 * <table>
 * <caption>Examples</caption>
 * <tr><th>file</th><th>what</th></tr>
 * <tr><td>straight-stick</td><td>inches; 3.9 in long, 0.4 in thick, even</td></tr>
 * <tr><td>bulb-thin-nose</td><td>90 mm; nose 5 mm thick at x = 0 to 35, bulb 16 mm at x = 65</td></tr>
 * <tr><td>two-bulbs-neck</td><td>100 mm; bulbs 14 mm at x = 34 and 11 mm at x = 80, neck 5 mm at x =
 * 60</td></tr>
 * <tr><td>finned-body</td><td>85 mm; flat body and two 1.6 mm fins, overlapping shells</td></tr>
 * <tr><td>cone-body</td><td>80 mm; 4 mm thick at x = 0, 15 mm at x = 74</td></tr>
 * <tr><td>two-bulbs-with-feed</td><td>the same with a 3 mm gate and a 10 mm sprue at the nose, mouth
 * at x = -31</td></tr>
 * <tr><td>gate-ladder</td><td>five bulbs of 15 x 30 mm on one runner, behind gates of 2, 2.5, 3, 4
 * and 5 mm; sprue's mouth at x = -34</td></tr>
 * </table>
 */
package gelfront.mesh.example;
