// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gelfront.report.RemediesFiles;
import java.util.List;
import org.junit.jupiter.api.Test;

class RemedySaidTest {
  private static String said(String... cells) {
    assertEquals(RemediesFiles.HEADS.size(), cells.length);
    return RemedySaid.facts(List.of(cells), "quick");
  }

  @Test
  void aLineOfTheTableIsASentence() {
    assertEquals(
        "Cures it: dent 0.17 mm, opens as soon as before.",
        said("hold 23 s", "0.19 mm", "0.17 mm", "same", "same", "40 N", "cures"));
    assertEquals(
        "Changes little: dent 0.24 mm at level quick, opens 82 s later.",
        said("mould at 50", "0.24 mm", "", "+82 s", "same", "40 N", "changes little"));
    assertEquals(
        "Cures it, but it may not fill: dent 0.17 mm at level quick, opens 11 s sooner, 0.4 ml more"
            + " to trim.",
        said("cooler", "0.17 mm", "", "-11 s", "+0.4 ml", "40 N", "cures, but it may not fill"));
    assertEquals(
        "Takes the dent away, not the oval: dent 0.17 mm, oval 0.63 mm at level quick, opens as soon as"
            + " before.",
        said(
            "gate 4 mm",
            "0.17 mm, oval 0.63 mm",
            "",
            "same",
            "same",
            "40 N",
            "takes the dent away, not the oval"));
    assertEquals(
        "No result: the gate is too narrow.",
        said("narrow", "no result", "", "", "", "", "the gate is too narrow"));
  }
}
