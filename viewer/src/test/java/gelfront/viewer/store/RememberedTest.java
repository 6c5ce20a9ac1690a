// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Units;
import java.awt.Rectangle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RememberedTest {
  @TempDir Path folder;

  @Test
  void whatIsToldIsThereNextTime() throws IOException {
    Path a = Files.createFile(folder.resolve("a.toml"));
    Path b = Files.createFile(folder.resolve("b.stl"));
    Remembered r = Remembered.in(folder.resolve("home"));
    assertTrue(r.firstTime());
    r.units(new Units(true, false));
    r.dark(true);
    r.bounds(new Rectangle(3, 4, 900, 600));
    r.opened(a);
    r.opened(b);
    r.opened(a);

    Remembered again = Remembered.in(folder.resolve("home"));

    assertEquals(new Units(true, false), again.units());
    assertTrue(again.dark());
    assertEquals(Optional.of(new Rectangle(3, 4, 900, 600)), again.bounds());
    assertEquals(List.of(a, b), again.recent());
    Files.delete(a);
    assertEquals(List.of(b), again.recent(), "what is gone isn't offered");
  }

  @Test
  void aDamagedFileIsForgotten() throws IOException {
    Files.writeString(folder.resolve("window.properties"), "bounds=1,x\nrecent.0=\\u00zz");

    Remembered r = Remembered.in(folder);

    assertTrue(r.bounds().isEmpty());
    assertEquals(Units.METRIC, r.units());
  }
}
