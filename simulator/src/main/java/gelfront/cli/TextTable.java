// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import java.io.PrintStream;
import java.util.List;

/**
 * Columns as wide as they need to be, two blanks apart.
 *
 * @param lines all of one length
 */
record TextTable(List<List<String>> lines) {
  private static final String APART = "  ";

  void print(PrintStream out) {
    for (List<String> line : lines) {
      StringBuilder s = new StringBuilder();
      for (int c = 0; c < line.size(); c++) {
        String cell = line.get(c);
        s.append(APART).append(cell).append(" ".repeat(width(c) - cell.length()));
      }
      out.println(s.toString().stripTrailing());
    }
  }

  private int width(int column) {
    return lines.stream().mapToInt(l -> l.get(column).length()).max().orElse(0);
  }
}
