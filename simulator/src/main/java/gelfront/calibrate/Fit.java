// SPDX-License-Identifier: Apache-2.0
package gelfront.calibrate;

import java.util.Arrays;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.fitting.leastsquares.ParameterValidator;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.apache.commons.math3.util.Pair;

/**
 * Least squares by Levenberg and Marquardt with differences for derivatives, and what the residuals
 * say of the parameters:
 *
 * <pre>  covariance = s^2 (J^T J)^-1,  s^2 = r^T r / (n - p),  interval: Student's t of n - p</pre>
 *
 * <p>Where residuals follow each other (correlation rho from one to the next beyond chance) there
 * are fewer of them than it seems: s^2 times (1 + rho) / (1 - rho).
 *
 * @param values of the parameters
 * @param errors standard error of each; infinite where the data don't tell it at all
 * @param correlation of each pair; NaN beside one that isn't told
 * @param fitted what the model gives, per reading
 * @param residuals reading less model
 * @param freedom readings less parameters
 */
public record Fit(
    double[] values,
    double[] errors,
    double[][] correlation,
    double[] fitted,
    double[] residuals,
    int freedom) {
  private static final int MOST_EVALUATIONS = 400;

  /** Of the largest singular value, below which a direction counts as untold. */
  private static final double UNTOLD = 1e-10;

  /** Readings from parameters. */
  interface Model {
    double[] at(double[] parameters);
  }

  /**
   * How the search goes.
   *
   * @param step for the derivative by each parameter, in its own unit
   * @param central differences both ways: twice the runs, for sharp answers
   * @param low that parameters don't go below
   * @param high that they don't go above
   * @param close relative change of the sum of squares at which it ends
   */
  record Search(double[] step, boolean central, double[] low, double[] high, double close) {}

  /**
   * @throws IllegalArgumentException if there are no more readings than parameters
   */
  static Fit of(Model model, double[] readings, double[] start, Search search) {
    if (readings.length <= start.length) {
      throw new IllegalArgumentException("fewer readings than parameters");
    }
    MultivariateJacobianFunction f =
        point -> {
          double[] p = point.toArray();
          double[] at = model.at(p);
          return new Pair<>(new ArrayRealVector(at, false), jacobian(model, p, at, search));
        };
    ParameterValidator within = point -> new ArrayRealVector(clamped(point.toArray(), search));
    Optimum best =
        new LevenbergMarquardtOptimizer()
            .withCostRelativeTolerance(search.close())
            .withParameterRelativeTolerance(search.close())
            .optimize(
                new LeastSquaresBuilder()
                    .model(f)
                    .target(readings)
                    .start(start)
                    .parameterValidator(within)
                    .maxEvaluations(MOST_EVALUATIONS)
                    .maxIterations(MOST_EVALUATIONS)
                    .build());
    return judged(best, readings);
  }

  private static double[] clamped(double[] p, Search s) {
    double[] q = p.clone();
    for (int i = 0; i < q.length; i++) {
      q[i] = Math.max(s.low()[i], Math.min(s.high()[i], q[i]));
    }
    return q;
  }

  private static RealMatrix jacobian(Model model, double[] p, double[] at, Search s) {
    RealMatrix j = MatrixUtils.createRealMatrix(at.length, p.length);
    for (int i = 0; i < p.length; i++) {
      double up = p[i] + s.step()[i] <= s.high()[i] ? s.step()[i] : -s.step()[i];
      double[] ahead = model.at(moved(p, i, up));
      double[] behind = s.central() ? model.at(moved(p, i, -up)) : at;
      for (int r = 0; r < at.length; r++) {
        j.setEntry(r, i, (ahead[r] - behind[r]) / (s.central() ? 2 * up : up));
      }
    }
    return j;
  }

  private static double[] moved(double[] p, int i, double by) {
    double[] q = p.clone();
    q[i] += by;
    return q;
  }

  private static Fit judged(Optimum best, double[] readings) {
    double[] residuals = best.getResiduals().toArray();
    double[] fitted = new double[readings.length];
    Arrays.setAll(fitted, i -> readings[i] - residuals[i]);
    int p = best.getPoint().getDimension();
    int freedom = readings.length - p;
    double square = Arrays.stream(residuals).map(r -> r * r).sum() / freedom;
    RealMatrix covariance = covariance(best.getJacobian(), p);
    double[] errors = new double[p];
    double[][] correlation = new double[p][p];
    double s = Math.sqrt(square * stretch(residuals));
    for (int i = 0; i < p; i++) {
      errors[i] = s * Math.sqrt(covariance.getEntry(i, i));
      for (int k = 0; k < p; k++) {
        correlation[i][k] =
            covariance.getEntry(i, k)
                / Math.sqrt(covariance.getEntry(i, i) * covariance.getEntry(k, k));
      }
    }
    return new Fit(best.getPoint().toArray(), errors, correlation, fitted, residuals, freedom);
  }

  /** (J^T J)^-1; infinite where a parameter leaves all readings alone. */
  private static RealMatrix covariance(RealMatrix j, int p) {
    double[] scale = new double[p];
    Arrays.setAll(scale, i -> j.getColumnVector(i).getNorm());
    RealMatrix scaled = j.copy();
    for (int i = 0; i < p; i++) {
      scaled.setColumnVector(i, j.getColumnVector(i).mapDivide(scale[i] > 0 ? scale[i] : 1));
    }
    SingularValueDecomposition svd =
        new SingularValueDecomposition(scaled.transpose().multiply(scaled));
    RealMatrix inverse;
    try {
      boolean whole = svd.getInverseConditionNumber() > UNTOLD;
      inverse =
          whole
              ? svd.getSolver().getInverse()
              : MatrixUtils.createRealIdentityMatrix(p).scalarMultiply(Double.POSITIVE_INFINITY);
    } catch (SingularMatrixException e) {
      inverse = MatrixUtils.createRealIdentityMatrix(p).scalarMultiply(Double.POSITIVE_INFINITY);
    }
    RealMatrix c = inverse.copy();
    for (int i = 0; i < p; i++) {
      for (int k = 0; k < p; k++) {
        double by = scale[i] * scale[k];
        c.setEntry(i, k, by > 0 ? inverse.getEntry(i, k) / by : Double.POSITIVE_INFINITY);
      }
    }
    return c;
  }

  /** How much less residuals tell that follow each other. */
  static double stretch(double[] r) {
    double rho = following(r);
    return rho > 2 / Math.sqrt(r.length) ? (1 + rho) / (1 - Math.min(rho, 0.98)) : 1;
  }

  /** Correlation of each residual with the next. */
  static double following(double[] r) {
    double both = 0;
    double all = 0;
    for (int i = 0; i < r.length; i++) {
      all += r[i] * r[i];
      both += i > 0 ? r[i] * r[i - 1] : 0;
    }
    return all > 0 ? both / all : 0;
  }

  /** What is left over, root of the mean square. */
  double rms() {
    return Math.sqrt(Arrays.stream(residuals).map(r -> r * r).average().orElse(0));
  }

  /** Half width of the interval that holds a parameter with 90 %. */
  double within(int parameter) {
    return new TDistribution(freedom).inverseCumulativeProbability(0.95) * errors[parameter];
  }
}
