// SPDX-License-Identifier: Apache-2.0
/**
 * What is open and what is done with it, without windows and pictures: opening, changing, quick
 * verdicts, checks, studies. All long work is on threads of {@link Backgrounds}.
 */
package gelfront.viewer.work;
