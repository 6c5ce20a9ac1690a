// SPDX-License-Identifier: Apache-2.0
/** How fast: the standard case and a large mesh against the clock. Used by the command line. */
package gelfront.timing;
