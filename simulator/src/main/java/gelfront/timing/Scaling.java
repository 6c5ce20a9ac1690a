// SPDX-License-Identifier: Apache-2.0
package gelfront.timing;

import gelfront.base.Quantities;
import gelfront.base.Workers;
import gelfront.run.CaseRunner;
import java.util.function.Consumer;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/** How time and memory grow with the number of plastisol cells. */
public final class Scaling {
  private static final double[] CELLS = {6e5, 1.2e6, 2.5e6, 5e6};

  private final Consumer<String> line;

  /**
   * @param line takes each line as soon as it is known
   */
  public Scaling(Consumer<String> line) {
    this.line = line;
  }

  /** Four sizes for some steps each, then the largest up to the verdict. */
  public void run(Workers workers) {
    tell("a big stick, %d threads", workers.threads());
    new BigBody(CELLS[0]).cost(workers); // warm
    SimpleRegression time = new SimpleRegression();
    SimpleRegression heap = new SimpleRegression();
    for (double cells : CELLS) {
      one(cells, workers, time, heap);
    }
    tell(
        "  slope of logarithms against cells: time per stage %.2f, heap held %.2f",
        time.getSlope(), heap.getSlope());
    Stopwatch<String> whole = Stopwatch.time(() -> whole(workers));
    tell(
        "  %s in %.0f s, peak heap %d MiB", whole.value(), whole.seconds(), whole.peakHeap() >> 20);
  }

  private void one(double cells, Workers workers, SimpleRegression time, SimpleRegression heap) {
    Stopwatch<BigBody> made = Stopwatch.time(() -> new BigBody(cells));
    BigBody body = made.value();
    Stopwatch<BigBody.Cost> stepped = Stopwatch.time(() -> body.cost(workers));
    BigBody.Cost cost = stepped.value();
    double n = body.cells();
    tell(
        "  %,9.0f cells: to voxels %.1f s; %.2f ns per cell and stage; heap held %.0f bytes per"
            + " cell, peak %.0f to voxels and %.0f in steps",
        n,
        made.seconds(),
        1e9 * cost.perCellStage(),
        cost.held(),
        made.peakHeap() / n,
        stepped.peakHeap() / n);
    time.addData(Math.log(n), Math.log(n * cost.perCellStage()));
    heap.addData(Math.log(n), Math.log(n * cost.held()));
  }

  private static String whole(Workers workers) {
    BigBody body = new BigBody(CELLS[CELLS.length - 1]);
    CaseRunner.Outcome outcome = body.run(workers);
    return Quantities.say(
        "%,d cells from caliper rows to the verdict (%d steps, heat off by %.1e): \"%s\"",
        body.cells(),
        outcome.steps(),
        outcome.end().ledger.imbalance(),
        outcome.judgement().findings().verdict());
  }

  private void tell(String format, Object... values) {
    line.accept(Quantities.say(format, values));
  }
}
