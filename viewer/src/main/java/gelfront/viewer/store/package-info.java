// SPDX-License-Identifier: Apache-2.0
/** What the window remembers from one time to the next, and what it recovers after a kill. */
package gelfront.viewer.store;
