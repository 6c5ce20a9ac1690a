// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.answer.VoxelDoubt;
import gelfront.base.Told;
import gelfront.finding.Amounts;
import gelfront.finding.Constriction;
import gelfront.finding.Dent;
import gelfront.finding.Fed;
import gelfront.finding.Findings;
import gelfront.finding.HotSpot;
import gelfront.finding.Opening;
import gelfront.finding.Pocket;
import gelfront.mesh.Vec3;
import gelfront.result.ArtifactWriter;
import gelfront.result.Health;
import gelfront.result.StoredRun;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/**
 * findings.json: the findings for people's own scripts. Millimetres, cubic millimetres, seconds,
 * °C, grams; places in the part's coordinates; a time that never came is null. The keys, with what
 * each means: {@code findings.schema.json} beside this class (JSON Schema 2020-12).
 */
public final class FindingsJson implements ArtifactWriter {
  private static final String FILE = "findings.json";

  private static final ObjectMapper JSON =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private final Optional<VoxelDoubt> voxels;

  /** Without a comparison of voxel sizes. */
  public FindingsJson() {
    this(Optional.empty());
  }

  /**
   * @param voxels how far the verdict hangs on their size, where it was compared
   */
  public FindingsJson(Optional<VoxelDoubt> voxels) {
    this.voxels = voxels;
  }

  @Override
  public String fileName() {
    return FILE;
  }

  @Override
  public void write(StoredRun run, OutputStream out) throws IOException {
    out.write(JSON.writeValueAsBytes(tree(run)));
  }

  /**
   * How far the verdict of a stored result hangs on its voxels.
   *
   * @param folder of the result
   * @param visible metres from which a dent is seen
   * @return empty where it wasn't compared, or where the file can't be read
   */
  public static Optional<VoxelDoubt> voxels(Path folder, double visible) {
    try {
      JsonNode said = JSON.readTree(folder.resolve(FILE).toFile()).path("voxel_size");
      return said.isObject() ? Optional.of(VoxelJson.of(said, visible)) : Optional.empty();
    } catch (IOException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private ObjectNode tree(StoredRun run) {
    Findings f = run.findings();
    ObjectNode n = JSON.createObjectNode();
    n.put("schema", "gelfront findings 1");
    n.put("name", run.name());
    n.put("severity", lower(f.severity()));
    n.put("verdict", f.verdict());
    n.put("explanation", f.explanation());
    f.advice().forEach(n.putArray("advice")::add);
    voxels.ifPresent(v -> VoxelJson.put(n.putObject("voxel_size"), v));
    number(n, "gate_sets_s", f.gateSets());
    number(n, "sprue_sets_s", f.sprueSets());
    number(n, "part_sets_s", f.partSets());
    number(n, "firm_at_s", f.firmAt());
    number(n, "linear_shrinkage_percent", f.linearShrinkage() * 100);
    number(n, "visible_dent_mm", f.visibleDepth() * 1e3);
    amounts(n.putObject("amounts"), f.amounts());
    feeding(n.putObject("feeding"), f.fed(), f.amounts().partVolume());
    if (f.filled().calculated()) {
      FillJson.put(n.putObject("filling"), f.filled());
    }
    if (f.opening().byClock()) {
      opening(n.putObject("opening"), f.opening());
    }
    ArrayNode pockets = n.putArray("pockets");
    f.pockets().forEach(p -> pocket(pockets.addObject(), p));
    ArrayNode health = n.putArray("health");
    for (Health.Line l : run.health().lines()) {
      health
          .addObject()
          .put("check", l.check())
          .put("result", l.result())
          .put("mark", lower(l.mark()));
    }
    run.cautions().stream().map(Told::metric).forEach(n.putArray("cautions")::add);
    return n;
  }

  private static void amounts(ObjectNode n, Amounts a) {
    number(n, "part_ml", a.partVolume() * 1e6);
    number(n, "part_g", a.partMass() * 1e3);
    number(n, "feed_ml", a.feedVolume() * 1e6);
    number(n, "feed_g", a.feedMass() * 1e3);
    number(n, "top_up_ml", a.topUpVolume() * 1e6);
    number(n, "top_up_g", a.topUpMass() * 1e3);
    number(n, "shot_ml", a.shotVolume() * 1e6);
    n.put("cavities", a.cavities());
    number(n, "injector_ml", a.injectorCapacity().orElse(Double.NaN) * 1e6);
    n.put("injector_holds_it", a.injectorHoldsIt());
  }

  private static void feeding(ObjectNode n, Fed f, double part) {
    n.put("by_flow", f.byFlow());
    number(n, "demand_mm3", f.demand() * 1e9);
    number(n, "fed_mm3", f.fed() * 1e9);
    number(n, "unfed_mm3", f.unfed() * 1e9);
    number(n, "demand_percent", 100 * f.demand() / part);
    number(n, "fed_percent", 100 * f.fed() / part);
    number(n, "unfed_percent", 100 * f.unfed() / part);
    number(n, "below_no_flow_mm3", f.belowNoFlow() * 1e9);
    number(n, "half_at_s", f.halfAt());
    number(n, "sprue_fell_mm", f.sprueFell() * 1e3);
    number(n, "sprue_dry_s", f.sprueDry());
  }

  private static void opening(ObjectNode n, Opening o) {
    number(n, "opened_s", o.at());
    n.put("severity", lower(o.severity()));
    number(n, "liquid_mm3", o.liquid() * 1e9);
    number(n, "oval_mm", o.oval() * 1e3);
    number(n, "oval_least_mm", o.least() * 1e3);
    place(n, "place_mm", o.place());
    number(n, "shut_until_s", o.shutUntil());
    n.put("sentence", o.sentence());
    n.put("bench_sign", o.sign());
  }

  private static void pocket(ObjectNode n, Pocket p) {
    n.put("number", p.number());
    p.cavities().forEach(n.putArray("cavities")::add);
    n.put("severity", lower(p.severity()));
    place(n, "centre_mm", p.centre());
    number(n, "volume_mm3", p.volume() * 1e9);
    number(n, "cut_off_s", p.cutOff());
    number(n, "last_set_s", p.lastSet());
    number(n, "mean_temperature_at_cut_off_degC", p.meanTemperatureAtCutOff());
    number(n, "unfed_low_mm3", p.unfedLow() * 1e9);
    number(n, "unfed_high_mm3", p.unfedHigh() * 1e9);
    number(n, "open_until_s", p.openUntil());
    number(n, "margin_s", p.margin());
    number(n, "dent_volume_mm3", p.dentVolume() * 1e9);
    n.put("sentence", p.sentence());
    n.put("bench_sign", p.sign());
    constriction(n.putObject("constriction"), p.constriction());
    ArrayNode dents = n.putArray("dents");
    for (Dent d : p.dents()) {
      ObjectNode one = dents.addObject();
      place(one, "place_mm", d.place());
      number(one, "depth_low_mm", d.depthLow() * 1e3);
      number(one, "depth_high_mm", d.depthHigh() * 1e3);
      number(one, "width_mm", d.width() * 1e3);
      number(one, "length_mm", d.length() * 1e3);
    }
    ArrayNode spots = n.putArray("hot_spots");
    for (HotSpot s : p.spots()) {
      ObjectNode one = spots.addObject();
      place(one, "place_mm", s.place());
      number(one, "set_time_s", s.setTime());
      number(one, "separated_at_s", s.separatedAt());
    }
  }

  static void constriction(ObjectNode n, Constriction c) {
    n.put("kind", lower(c.kind()));
    place(n, "place_mm", c.place());
    number(n, "width_mm", c.width() * 1e3);
    number(n, "closed_at_s", c.closedAt());
  }

  static void place(ObjectNode n, String key, Vec3 p) {
    n.putArray(key).add(tidy(p.x() * 1e3)).add(tidy(p.y() * 1e3)).add(tidy(p.z() * 1e3));
  }

  static void number(ObjectNode n, String key, double v) {
    if (Double.isFinite(v)) {
      n.put(key, tidy(v));
    } else {
      n.putNull(key);
    }
  }

  /** Six significant digits: what lies beyond is not known anyway. */
  private static double tidy(double v) {
    return Double.parseDouble(String.format(Locale.ROOT, "%.6g", v + 0.0));
  }

  static String lower(Enum<?> e) {
    return e.name().toLowerCase(Locale.ROOT);
  }
}
