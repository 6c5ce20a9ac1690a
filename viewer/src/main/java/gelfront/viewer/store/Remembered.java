// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.store;

import gelfront.base.Units;
import java.awt.Rectangle;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;

/** Units, light or dark, window, files opened last. What can't be read or written is forgotten. */
public final class Remembered {
  private static final String FILE = "window.properties";
  private static final int RECENT = 8;

  private final Path folder;
  private final Properties values = new Properties();

  private Remembered(Path folder) {
    this.folder = folder;
  }

  /**
   * @param folder of the user's own; need not exist
   */
  public static Remembered in(Path folder) {
    Remembered r = new Remembered(folder);
    try (Reader in = Files.newBufferedReader(folder.resolve(FILE))) {
      r.values.load(in);
    } catch (IOException | IllegalArgumentException e) {
      r.values.clear();
    }
    return r;
  }

  /**
   * Property {@code gelfront.home}, {@code GELFRONT_HOME}, or {@code .gelfront} in the user's own
   * folder.
   */
  public static Path folder() {
    String home = System.getProperty("gelfront.home", System.getenv("GELFRONT_HOME"));
    return home == null || home.isBlank()
        ? Path.of(System.getProperty("user.home"), ".gelfront")
        : Path.of(home);
  }

  /** Never seen a window before. */
  public boolean firstTime() {
    return values.isEmpty();
  }

  public Units units() {
    return new Units(flag("inch"), flag("fahrenheit"));
  }

  public void units(Units units) {
    values.setProperty("inch", Boolean.toString(units.inch()));
    values.setProperty("fahrenheit", Boolean.toString(units.fahrenheit()));
    save();
  }

  public boolean dark() {
    return flag("dark");
  }

  public void dark(boolean dark) {
    values.setProperty("dark", Boolean.toString(dark));
    save();
  }

  /** The tour has been seen. */
  public void toured() {
    values.setProperty("toured", "true");
    save();
  }

  private boolean flag(String key) {
    return Boolean.parseBoolean(values.getProperty(key));
  }

  /** Of the window, on the screen. */
  public Optional<Rectangle> bounds() {
    try {
      String[] n = values.getProperty("bounds", "").split(",", -1);
      int[] v = new int[4];
      for (int i = 0; i < 4; i++) {
        v[i] = Integer.parseInt(n[i]);
      }
      return v[2] > 200 && v[3] > 200
          ? Optional.of(new Rectangle(v[0], v[1], v[2], v[3]))
          : Optional.empty();
    } catch (NumberFormatException | IndexOutOfBoundsException e) {
      return Optional.empty();
    }
  }

  public void bounds(Rectangle r) {
    values.setProperty("bounds", r.x + "," + r.y + "," + r.width + "," + r.height);
    save();
  }

  /** Opened last, newest first; those that are still there. */
  public List<Path> recent() {
    List<Path> list = new ArrayList<>();
    for (int i = 0; i < RECENT; i++) {
      String path = values.getProperty("recent." + i);
      if (path != null && Files.exists(Path.of(path))) {
        list.add(Path.of(path));
      }
    }
    return list;
  }

  public void opened(Path path) {
    List<Path> list = new ArrayList<>(recent());
    Path whole = path.toAbsolutePath().normalize();
    list.remove(whole);
    list.add(0, whole);
    for (int i = 0; i < RECENT; i++) {
      values.remove("recent." + i);
    }
    for (int i = 0; i < Math.min(RECENT, list.size()); i++) {
      values.setProperty("recent." + i, list.get(i).toString());
    }
    save();
  }

  private void save() {
    try {
      Files.createDirectories(folder);
      Path next = folder.resolve(FILE + ".new");
      try (Writer out = Files.newBufferedWriter(next)) {
        values.store(out, null);
      }
      Files.move(next, folder.resolve(FILE), StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      values.setProperty("forgotten", "true");
    }
  }
}
