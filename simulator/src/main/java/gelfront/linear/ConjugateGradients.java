// SPDX-License-Identifier: Apache-2.0
package gelfront.linear;

/** Conjugate gradients with one multigrid cycle per iteration, from where the last solve ended. */
public final class ConjugateGradients {
  private final Multigrid a;
  private final double[] r;
  private final double[] z;
  private final double[] p;
  private final double[] q;

  /** Of the residuals: r r, and their sum. */
  private double square;

  private double sum;

  /** What the root of the one and the size of the other may be. */
  private double most;

  private double mostSum;

  public ConjugateGradients(Multigrid a) {
    this.a = a;
    r = new double[a.nodes()];
    z = new double[a.nodes()];
    p = new double[a.nodes()];
    q = new double[a.nodes()];
  }

  /**
   * Solves A x = b.
   *
   * @param b per node; not modified; nodes without coefficients are passed over
   * @param x the start, and the result
   * @return iterations
   * @throws IllegalStateException if the ceiling is reached
   */
  public int solve(double[] b, double[] x, StopRule stop) {
    return solve(b, x, stop, b);
  }

  /**
   * As above.
   *
   * @param measure what residuals are held against, per node, where b would be too large a measure
   */
  public int solve(double[] b, double[] x, StopRule stop, double[] measure) {
    measure(measure, stop);
    begin(b, x);
    double before = 1;
    for (int iteration = 0; ; iteration++) {
      if (Math.sqrt(square) <= most && Math.abs(sum) <= mostSum) {
        return iteration;
      }
      if (iteration == stop.ceiling()) {
        throw new IllegalStateException(
            "no solution within " + stop.ceiling() + " iterations of conjugate gradients");
      }
      double rz = a.cycle(r, z);
      advance(x, rz, iteration == 0 ? 0 : rz / before);
      before = rz;
    }
  }

  /** The residuals of the start. */
  private void begin(double[] b, double[] x) {
    a.multiply(x, q);
    int[] nodes = a.activeNodes();
    for (int i = 0; i < a.active(); i++) {
      int c = nodes[i];
      r[c] = b[c];
      p[c] = 0;
    }
    take(x, 1);
  }

  /** Sets what residuals have to come to. */
  private void measure(double[] by, StopRule stop) {
    int[] nodes = a.activeNodes();
    double squares = 0;
    double all = 0;
    for (int i = 0; i < a.active(); i++) {
      double m = by[nodes[i]];
      squares += m * m;
      all += Math.abs(m);
    }
    most = stop.share() * Math.sqrt(squares);
    mostSum = stop.sumShare() * all;
  }

  private void advance(double[] x, double rz, double beta) {
    int[] nodes = a.activeNodes();
    for (int i = 0; i < a.active(); i++) {
      int c = nodes[i];
      p[c] = z[c] + beta * p[c];
    }
    take(x, rz / a.multiply(p, q));
  }

  /** Goes so far along p, and takes q as often off the residuals. */
  private void take(double[] x, double alpha) {
    int[] nodes = a.activeNodes();
    double squares = 0;
    double all = 0;
    for (int i = 0; i < a.active(); i++) {
      int c = nodes[i];
      x[c] += alpha * p[c];
      double rest = r[c] - alpha * q[c];
      r[c] = rest;
      squares += rest * rest;
      all += rest;
    }
    square = squares;
    sum = all;
  }
}
