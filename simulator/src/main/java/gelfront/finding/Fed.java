// SPDX-License-Identifier: Apache-2.0
package gelfront.finding;

/**
 * What one part needed and got while it cooled, m3. Demand: contraction above the no-flow
 * temperature from the end of the shot on. Fed: liquid that came for it. Unfed: demand less fed.
 *
 * @param byFlow whether the flow was calculated; false: fed as long as a liquid path is open
 * @param demand m3
 * @param fed m3
 * @param unfed m3
 * @param belowNoFlow m3 of contraction below no-flow down to 25 °C, which nothing can feed
 * @param halfAt s at which less than half of what the part needs comes; +infinity: never
 * @param sprueFell metres that the sprue's surface has sunk in the end, top-ups taken off
 * @param sprueDry s at which air came to the sprue's end; +infinity: never
 */
public record Fed(
    boolean byFlow,
    double demand,
    double fed,
    double unfed,
    double belowNoFlow,
    double halfAt,
    double sprueFell,
    double sprueDry) {}
