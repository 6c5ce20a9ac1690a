// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.coupled;

import java.util.Arrays;

/** Conjugate gradients for the matrix that a multigrid hierarchy holds, one cycle each. */
final class ConjugateGradients {
  private static final int CEILING = 300;

  private final double[] z;
  private final double[] p;
  private final double[] q;
  private int iterations;

  ConjugateGradients(int nodes) {
    z = new double[nodes];
    p = new double[nodes];
    q = new double[nodes];
  }

  /** Iterations of the last solve. */
  int iterations() {
    return iterations;
  }

  /**
   * Solves A x = r from x = 0.
   *
   * @param r modified: what is left over
   * @param share of its first norm, preconditioned, to which the residual is brought down
   * @throws IllegalStateException if that is not reached
   */
  void solve(Multigrid a, double[] r, double[] x, double share) {
    Arrays.fill(x, 0);
    a.cycle(r, z);
    System.arraycopy(z, 0, p, 0, p.length);
    double rz = dot(r, z);
    double stop = share * share * rz;
    iterations = 0;
    while (rz > stop) {
      if (iterations++ == CEILING) {
        throw new IllegalStateException("conjugate gradients do not converge");
      }
      a.multiply(p, q);
      double alpha = rz / dot(p, q);
      for (int i = 0; i < x.length; i++) {
        x[i] += alpha * p[i];
        r[i] -= alpha * q[i];
      }
      a.cycle(r, z);
      double next = dot(r, z);
      double beta = next / rz;
      rz = next;
      for (int i = 0; i < p.length; i++) {
        p[i] = z[i] + beta * p[i];
      }
    }
  }

  private static double dot(double[] a, double[] b) {
    double s = 0;
    for (int i = 0; i < a.length; i++) {
      s += a[i] * b[i];
    }
    return s;
  }
}
