// SPDX-License-Identifier: Apache-2.0
/**
 * The command line: the only place that wires, prints and ends the process. In: arguments. Out:
 * words or JSON on standard output, progress and one-line errors on standard error, an exit code.
 */
package gelfront.cli;
