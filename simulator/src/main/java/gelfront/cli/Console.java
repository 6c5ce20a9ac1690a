// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import java.io.PrintStream;
import java.util.function.BooleanSupplier;

/**
 * Where a command prints and whom it asks whether to go on.
 *
 * @param out answers
 * @param err progress and errors
 * @param terminal whether {@code err} is watched by a person
 * @param cancelled true once somebody wants to stop
 * @param debug whether errors show where in the program they arose
 */
record Console(
    PrintStream out, PrintStream err, boolean terminal, BooleanSupplier cancelled, boolean debug) {}
