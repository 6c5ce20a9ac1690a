// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gelfront.mesh.Vec3;
import gelfront.setup.CaseFile;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import gelfront.setup.PartLoader;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SecondGateTest {
  /** The bean is 12 mm thick: its second gate is 7 mm wide, whatever the sprue. */
  @ParameterizedTest
  @CsvSource({"8, 8.4", "9.5, 9.5", "14, 10.5"})
  void itsRunnerIsNoWiderThanTheSprueIfThatWillDo(double sprue, double wide) {
    String text = StudyCases.BEAN.replace("diameter = \"8 mm\"", "diameter = \"" + sprue + " mm\"");
    LoadedCase bean = CaseFile.parse("bean.toml", text, Path.of("").toAbsolutePath());
    GatePlaces places = new GatePlaces(PartLoader.load(bean.setup().part()).mesh());

    SecondGate gate = SecondGate.near(bean, places, new Vec3(8e-3, 0, 0), 1).orElseThrow();

    assertEquals(7e-3, gate.gate(), 1e-9);
    String runner = ((Change.Add) gate.change()).values().get("runner");
    assertEquals(wide, Double.parseDouble(runner.replaceAll("[^0-9.]", "")), 1e-9, runner);
  }
}
