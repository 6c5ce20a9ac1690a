// SPDX-License-Identifier: Apache-2.0
/** Properties of plastisol and mould, with their sources; the built-in table is a data file. */
package gelfront.material;
