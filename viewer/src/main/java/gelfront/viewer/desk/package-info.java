// SPDX-License-Identifier: Apache-2.0
/** The window's panes. The window's thread alone. */
package gelfront.viewer.desk;
