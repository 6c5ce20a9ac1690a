// SPDX-License-Identifier: Apache-2.0
package gelfront.doubt;

import gelfront.answer.Doubt;
import gelfront.setup.Change;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * An input that isn't known for sure.
 *
 * @param shown for people
 * @param guess of its value, in the unit shown
 * @param changes what makes the case have a value
 */
record Variable(Doubt.Unknown shown, Guess guess, DoubleFunction<List<Change>> changes) {}
