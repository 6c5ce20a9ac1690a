// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

/**
 * Where a result comes from. Kept apart from the findings, since it differs from run to run.
 *
 * @param version of the program
 * @param calculatedAt ISO date and time
 * @param host operating system and Java
 * @param wallSeconds the run took
 */
public record Provenance(String version, String calculatedAt, String host, double wallSeconds) {}
