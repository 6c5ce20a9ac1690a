package gelfront.setup;

import gelfront.material.Plastisol;
import gelfront.mesh.Vec3;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Everything a run needs to know, checked, in SI units and °C.
 *
 * @param name for titles
 * @param part where the shape comes from
 * @param feed gate, runner, sprue
 * @param growths metal filed away
 * @param block the mould
 * @param plastisol what is injected
 * @param shot the recipe
 * @param up which way is up while the part cools; length one
 * @param clampingForce N that holds the halves together
 * @param cavities on the runner that are fed by one shot, at least 1
 * @param numerics how finely
 * @param warnings in words for the report: what is allowed but dangerous or odd
 */
public record Case(
    String name,
    PartShape part,
    FeedSystem feed,
    List<Growth> growths,
    Block block,
    Plastisol plastisol,
    Shot shot,
    Vec3 up,
    OptionalDouble clampingForce,
    int cavities,
    Numerics numerics,
    List<String> warnings) {
  public Case {
    growths = List.copyOf(growths);
    warnings = List.copyOf(warnings);
    up = up.unit();
    if (cavities < 1) {
      throw new IllegalArgumentException("at least one cavity");
    }
  }
}
