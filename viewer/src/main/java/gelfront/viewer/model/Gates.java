// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.setup.Change;
import gelfront.setup.FeedSystem;
import gelfront.setup.LoadedCase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The gates of a declared feed by their place in the case: 0 is {@code [gate]}, n the n-th {@code
 * [[another_gate]]}.
 */
public final class Gates {
  /** Of the gate's width; common practice, no source. */
  private static final double RUNNER = 1.5;

  private Gates() {}

  /** All of them; none where they are in the mesh. */
  public static List<FeedSystem.Gate> of(LoadedCase loaded) {
    return loaded.setup().feed() instanceof FeedSystem.Declared d
        ? Stream.concat(Stream.of(d.gate()), d.others().stream().map(FeedSystem.Branch::gate))
            .toList()
        : List.of();
  }

  /** Of its table, to be followed by a dot and a key. */
  public static String table(int number) {
    return number == 0 ? "gate" : "another_gate." + number;
  }

  /** The other way round. */
  static int number(String table) {
    return table.equals("gate") ? 0 : Integer.parseInt(table.replaceFirst(".*\\.", ""));
  }

  /**
   * A further gate as wide as the first one.
   *
   * @param part metres
   */
  public static List<Change> added(FeedSystem.Declared feed, TriangleMesh part, Picker.Hit hit) {
    double size = feed.gate().section().width();
    double runner = Math.round(RUNNER * size * 1e4) * 1e-4;
    Vec3 at = GateDrag.place(hit);
    Vec3 direction = GateDrag.direction(hit);
    Map<String, String> table = new LinkedHashMap<>();
    table.put("at", Change.place(at));
    table.put("direction", Change.direction(direction));
    table.put("size", Change.quantity(1e3 * size, "mm"));
    table.put("land", Change.quantity(1e3 * feed.gate().land(), "mm"));
    table.put("runner", Change.quantity(1e3 * runner, "mm"));
    table.put("way", written(new RunnerWay(feed, part, at, direction, runner).places()));
    return List.of(new Change.Add("another_gate", table));
  }

  /**
   * A gate on another place; its sprue, or its runner, goes with it.
   *
   * @param part metres
   */
  public static List<Change> moved(LoadedCase loaded, TriangleMesh part, int number, Picker.Hit h) {
    FeedSystem.Declared feed = (FeedSystem.Declared) loaded.setup().feed();
    if (number > 0) {
      FeedSystem.Branch b = feed.others().get(number - 1);
      Vec3 at = GateDrag.place(h);
      Vec3 direction = GateDrag.direction(h);
      double runner = b.runner().width();
      List<Change> all = new ArrayList<>(GateDrag.placed(table(number), h));
      all.add(way(number, new RunnerWay(feed, part, at, direction, runner)));
      return all;
    }
    List<Change> all = new ArrayList<>(GateDrag.moved(h));
    if (!feed.others().isEmpty()) {
      FeedSystem.Declared there = (FeedSystem.Declared) loaded.with(all).setup().feed();
      for (int n = 1; n <= there.others().size(); n++) {
        all.add(way(n, RunnerWay.of(there, part, there.others().get(n - 1))));
      }
    }
    return all;
  }

  private static Change way(int number, RunnerWay way) {
    return new Change.Set(table(number) + ".way", written(way.places()));
  }

  private static String written(List<Vec3> places) {
    return places.stream()
        .map(p -> Change.place(GateDrag.rounded(p.times(1e3))))
        .collect(Collectors.joining(", ", "[", "]"));
  }

  /** A further gate is left out. */
  public static List<Change> removed(int number) {
    return List.of(new Change.Remove(table(number)));
  }
}
