// SPDX-License-Identifier: Apache-2.0
package gelfront.finding;

/** How bad, from the depth a person sees. */
public enum Severity {
  /** Even the high bound stays below what is seen. */
  CLEAN,
  /** The range straddles what is seen. */
  MAY_DENT,
  /** Even the low bound is seen. */
  WILL_DENT
}
