// SPDX-License-Identifier: Apache-2.0
/** What is shown, without the engine: tested without a window. */
package gelfront.viewer.model;
