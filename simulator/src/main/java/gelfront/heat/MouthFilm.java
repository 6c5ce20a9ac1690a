// SPDX-License-Identifier: Apache-2.0
package gelfront.heat;

/**
 * What the plastisol meets at the sprue's open end: q = h (T - T_beyond).
 *
 * @param film h, W/m2 K; 0 insulates
 * @param temperature °C beyond
 */
public record MouthFilm(double film, double temperature) {
  public static final MouthFilm INSULATED = new MouthFilm(0, 0);
}
