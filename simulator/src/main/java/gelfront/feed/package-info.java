/**
 * Feeding. In: set times. Out: when each place lost its last flowing path to the sprue, and what
 * closed it. Knows no heat equation and no results.
 */
package gelfront.feed;
