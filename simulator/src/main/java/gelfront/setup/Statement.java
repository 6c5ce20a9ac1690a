// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

/**
 * One input in words.
 *
 * @param name what it is
 * @param value as a maker would write it
 * @param source where an assumed value comes from; empty where the case states it
 */
public record Statement(String name, String value, String source) {}
