// SPDX-License-Identifier: Apache-2.0
package gelfront.material;

/**
 * A value with its doubt.
 *
 * @param source marks as explained at the head of the material table
 */
public record Ranged(double low, double typical, double high, String source) {
  public Ranged {
    if (!(low <= typical && typical <= high) || Double.isInfinite(low) || Double.isInfinite(high)) {
      throw new IllegalArgumentException(
          "low, typical, high must be finite and rise: " + low + ", " + typical + ", " + high);
    }
  }
}
