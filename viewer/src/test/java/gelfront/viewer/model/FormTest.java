// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Units;
import gelfront.setup.CaseException;
import gelfront.setup.CaseFile;
import gelfront.setup.LoadedCase;
import gelfront.viewer.Cases;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FormTest {
  @TempDir Path folder;
  private LoadedCase loaded;

  @BeforeEach
  void read() throws IOException {
    loaded = CaseFile.read(Cases.barCase(folder));
  }

  private static FormField field(String key) {
    return fields().stream().filter(f -> f.key().equals(key)).findFirst().orElseThrow();
  }

  private static List<FormField> fields() {
    return Form.sections().values().stream().flatMap(List::stream).toList();
  }

  @Test
  void everyLineSaysWhatItMeansAndWhatIsUsual() {
    for (FormField f : fields()) {
      assertFalse(f.meaning().isBlank(), f.key());
      assertEquals(f.isChoice(), f.usual(Units.METRIC).isEmpty(), f.key());
      assertTrue(f.isChoice() || f.low() < f.high(), f.key());
    }
  }

  @Test
  void everyLineThatShowsAValueTakesItBack() {
    for (FormField f : fields()) {
      String shown = f.shown(loaded, Units.METRIC);
      if (!shown.isEmpty()) {
        LoadedCase same = loaded.with(f.changed(shown, loaded, Units.METRIC));
        assertEquals(shown, f.shown(same, Units.METRIC), f.key());
      }
    }
  }

  @Test
  void anotherValueIsInTheCaseAndCommentsStay() {
    FormField size = field("gate.size");

    LoadedCase wider = loaded.with(size.changed("1/4 in", loaded, Units.METRIC));

    assertEquals(6.35, Double.parseDouble(size.shown(wider, Units.METRIC)), 1e-9);
    assertTrue(wider.text().contains("\"1/4 in\"   " + Cases.COMMENT), wider.text());
    assertFalse(size.odd(loaded));
    assertTrue(size.odd(wider), "6.35 mm is more than usual");
  }

  @Test
  void aRunnerComesWithBothItsSizes() {
    FormField length = field("runner.length");
    assertEquals("", length.shown(loaded, Units.METRIC));

    LoadedCase longer = loaded.with(length.changed("12", loaded, Units.METRIC));

    assertEquals("12", length.shown(longer, Units.METRIC));
    assertEquals("4.5", field("runner.size").shown(longer, Units.METRIC));
  }

  @Test
  void aRectangularGateComesWithAHeightAndLosesItAgain() {
    FormField shape = field("gate.shape");
    LoadedCase flat = loaded.with(shape.changed("rectangular", loaded, Units.METRIC));
    assertEquals("1.5", field("gate.height").shown(flat, Units.METRIC));

    LoadedCase round = flat.with(shape.changed("round", flat, Units.METRIC));

    assertEquals("round", shape.shown(round, Units.METRIC));
    assertEquals("", field("gate.height").shown(round, Units.METRIC));
  }

  @Test
  void whatCanNotBeIsRefusedByTheCasesOwnRules() {
    FormField hot = field("shot.temperature");

    assertThrows(CaseException.class, () -> loaded.with(hot.changed("400", loaded, Units.METRIC)));
  }

  @Test
  void aChoiceIsAWordOfTheMaterialTable() {
    FormField metal = field("block.material");
    List<String> choices = metal.choices().apply(loaded);

    LoadedCase other = loaded.with(metal.changed(choices.get(1), loaded, Units.METRIC));

    assertTrue(choices.contains("aluminium-6061"));
    assertEquals(choices.get(1), metal.shown(other, Units.METRIC));
  }
}
