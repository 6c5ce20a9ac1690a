// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import java.util.List;

/**
 * Plates on one another, each at a temperature of its own at first, between films to surroundings
 * at constant temperatures:
 *
 * <pre>
 *   T_0 -h_0-| layer 1 |-c-| layer 2 |-c- ... |-h_n- T_n
 *
 *   T(x, t) = T_steady(x) + sum over m of a_m X_m(x) exp(-lambda_m t)
 *   k X'' = -lambda C X in each layer,  k X' continuous,  X jumps by k X' / c at contacts
 *   k X' = h_0 X at the left,  k X' = -h_n X at the right
 *   a_m = integral of C (T_start - T_steady) X_m / integral of C X_m^2</pre>
 *
 * Eigenvalues by counting: with X = r sin(phi), k X' = r cos(phi), phi at the right end rises with
 * lambda and passes its wanted value modulo pi once each, so that none is missed. Sources: Carslaw
 * and Jaeger, Conduction of Heat in Solids, ch. II and III (composite plates); Tittle, J. Appl.
 * Phys. 36 (1965) 1486 (orthogonality with weight C); Pruefer's angle: any book on Sturm-Liouville
 * problems. All from memory.
 */
public final class LayeredPlate {
  private static final int TERMS = 150;

  /**
   * A layer.
   *
   * @param thickness metres
   * @param conductivity W/m K
   * @param capacity J/m3 K
   * @param start °C
   */
  public record Layer(double thickness, double conductivity, double capacity, double start) {
    double wave(double lambda) {
      return Math.sqrt(lambda * capacity / conductivity);
    }
  }

  /**
   * What an outer face meets.
   *
   * @param film W/m2 K, 0 insulates
   * @param temperature °C
   */
  public record Outside(double film, double temperature) {}

  private final List<Layer> layers;
  private final double contact;
  private final Outside left;
  private final Outside right;
  private final double[] lambda = new double[TERMS];
  private final double[] amplitude = new double[TERMS];

  /** W/m2 of the steady state, towards +x; and its temperature at the left face. */
  private final double flow;

  private final double leftEnd;

  /**
   * @param contact W/m2 K between layers
   * @throws IllegalArgumentException if both outer faces are insulated
   */
  public LayeredPlate(List<Layer> layers, double contact, Outside left, Outside right) {
    if (left.film() == 0 && right.film() == 0) {
      throw new IllegalArgumentException("one film at least: else there is nothing to end at");
    }
    this.layers = List.copyOf(layers);
    this.contact = contact;
    this.left = left;
    this.right = right;
    double resistance = 1 / left.film() + 1 / right.film() + (layers.size() - 1) / contact;
    for (Layer l : layers) {
      resistance += l.thickness() / l.conductivity();
    }
    flow = (left.temperature() - right.temperature()) / resistance;
    leftEnd = left.film() == 0 ? right.temperature() : left.temperature() - flow / left.film();
    double first = 0;
    for (int m = 0; m < TERMS; m++) {
      lambda[m] = eigenvalue(m, first);
      amplitude[m] = amplitude(lambda[m]);
      first = lambda[m];
    }
  }

  private double eigenvalue(int m, double above) {
    double wanted = Math.atan2(1, -right.film()) + m * Math.PI;
    double high = Math.max(1e-6, 2 * above);
    while (angle(high) < wanted) {
      high *= 2;
    }
    return Roots.find(l -> angle(l) - wanted, above, high);
  }

  /** phi at the right end. */
  private double angle(double lambda) {
    double phi = Math.atan2(1, left.film());
    for (int i = 0; i < layers.size(); i++) {
      Layer l = layers.get(i);
      if (i > 0) {
        double beyond = Math.atan2(Math.sin(phi) + Math.cos(phi) / contact, Math.cos(phi));
        phi += forward(beyond - phi);
      }
      double stiff = l.conductivity() * l.wave(lambda);
      if (stiff > 0) {
        phi = unscaled(scaled(phi, stiff) + l.wave(lambda) * l.thickness(), stiff);
      } else {
        double beyond =
            Math.atan2(
                Math.sin(phi) + Math.cos(phi) * l.thickness() / l.conductivity(), Math.cos(phi));
        phi += forward(beyond - phi);
      }
    }
    return phi;
  }

  /** The same turn as one from 0 on, rounding apart. */
  private static double forward(double turn) {
    double whole = 2 * Math.PI;
    double t = turn - whole * Math.floor(turn / whole);
    return t > whole - 1e-6 ? t - whole : t;
  }

  private static double scaled(double phi, double stiff) {
    double turns = Math.floor(phi / Math.PI) * Math.PI;
    return turns + Math.atan2(stiff * Math.sin(phi - turns), Math.cos(phi - turns));
  }

  private static double unscaled(double psi, double stiff) {
    double turns = Math.floor(psi / Math.PI) * Math.PI;
    return turns + Math.atan2(Math.sin(psi - turns) / stiff, Math.cos(psi - turns));
  }

  /** X and k X' at the left face of each layer. */
  private double[][] mode(double lambda) {
    double[][] at = new double[layers.size()][];
    double x = 1;
    double q = left.film();
    for (int i = 0; i < at.length; i++) {
      Layer l = layers.get(i);
      x += i > 0 ? q / contact : 0;
      at[i] = new double[] {x, q};
      double mu = l.wave(lambda);
      double k = l.conductivity();
      double sine = Math.sin(mu * l.thickness());
      double cosine = Math.cos(mu * l.thickness());
      double next = x * cosine + q / (k * mu) * sine;
      q = q * cosine - k * mu * x * sine;
      x = next;
    }
    return at;
  }

  private double amplitude(double lambda) {
    double[][] at = mode(lambda);
    double above = 0;
    double below = 0;
    double steady = leftEnd;
    for (int i = 0; i < at.length; i++) {
      Layer l = layers.get(i);
      steady -= i > 0 ? flow / contact : 0;
      double mu = l.wave(lambda);
      double a = at[i][0];
      double b = at[i][1] / (l.conductivity() * mu);
      double d = l.thickness();
      double s = Math.sin(mu * d);
      double c = Math.cos(mu * d);
      double whole = (a * s + b * (1 - c)) / mu; // of X
      double first = // of x X
          a * (d * s / mu + (c - 1) / (mu * mu)) + b * (s / (mu * mu) - d * c / mu);
      double slope = -flow / l.conductivity();
      above += l.capacity() * ((l.start() - steady) * whole - slope * first);
      below +=
          l.capacity()
              * ((a * a + b * b) * d / 2 + (a * a - b * b) * s * c / (2 * mu) + a * b * s * s / mu);
      steady += slope * d;
    }
    return above / below;
  }

  /**
   * °C.
   *
   * @param layer from 0
   * @param x metres from its left face
   * @param time s
   */
  public double at(int layer, double x, double time) {
    double sum = leftEnd - layer * flow / contact - flow * x / layers.get(layer).conductivity();
    for (Layer l : layers.subList(0, layer)) {
      sum -= flow * l.thickness() / l.conductivity();
    }
    for (int m = 0; m < TERMS; m++) {
      double decay = Math.exp(-lambda[m] * time);
      if (decay > 1e-18) {
        double[] mode = mode(lambda[m])[layer];
        Layer l = layers.get(layer);
        double mu = l.wave(lambda[m]);
        double value =
            mode[0] * Math.cos(mu * x) + mode[1] / (l.conductivity() * mu) * Math.sin(mu * x);
        sum += amplitude[m] * value * decay;
      }
    }
    return sum;
  }

  /** s at which a place has cooled to a temperature, between two times. */
  public double crossing(int layer, double x, double temperature, double from, double to) {
    return Roots.find(t -> at(layer, x, t) - temperature, from, to);
  }
}
