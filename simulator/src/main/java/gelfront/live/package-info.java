// SPDX-License-Identifier: Apache-2.0
/**
 * Live mode: one part, changing gates, sprues, blocks and recipes, a verdict for each. In: a loaded
 * case, an executor, changed cases as they come. Promised: the newest request wins, what it gives
 * is what a fresh run gives, no thread of its own, nothing runs while nothing is asked.
 *
 * <pre>{@code
 * LoadedCase loaded = CaseFile.read(Path.of("two-bulbs-neck.toml"));
 * ExecutorService one = Executors.newSingleThreadExecutor();
 * LiveModel live = LiveModel.open(loaded, Workers.SERIAL, one);
 * for (double mm = 3; mm <= 5; mm += 0.1) { // somebody drags the gate
 *   live.request(withGate(loaded.setup(), mm * 1e-3))
 *       .thenAccept(findings -> show(findings.verdict())); // not called for gates passed over
 * }
 * }</pre>
 */
package gelfront.live;
