// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.evidence.Check;
import gelfront.grid.Cavity;
import gelfront.grid.VoxelModel;
import gelfront.heat.MouthFilm;
import gelfront.heat.SplitStepper;
import gelfront.material.HeatCurves;
import gelfront.material.MouldMaterial;
import gelfront.mesh.Box;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.run.ShotRun;
import gelfront.setup.Block;
import gelfront.state.ThermalState;
import gelfront.voxelize.CavityBuilder;
import gelfront.voxelize.Labelled;
import gelfront.voxelize.MouldBuilder;
import gelfront.voxelize.Mouth;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Two bulbs with a slanted neck and a side gate, off the middle of a block, with latent heat,
 * contact and air, against tetrahedral finite elements: two-bulbs.json says how those were got.
 */
class SecondOpinionTest {
  private static final int SEGMENTS = 96;

  /** What a run must agree on: seconds, and the share it may be off. */
  private record Time(String what, double expected, double seen, double share) {
    DynamicTest test() {
      Check check = Check.of("two bulbs set, s: " + what, "tetrahedral finite elements");
      return DynamicTest.dynamicTest(what, () -> check.expected(expected).got(seen).within(share));
    }
  }

  private static JsonNode data(String name) throws IOException {
    try (InputStream in =
        SecondOpinionTest.class.getResourceAsStream("/gelfront/validation/" + name)) {
      return new ObjectMapper().readTree(in);
    }
  }

  private static Vec3 mm(JsonNode n) {
    return mm(n.get(0).asDouble(), n.get(1).asDouble(), n.get(2).asDouble());
  }

  private static Vec3 mm(double x, double y, double z) {
    return new Vec3(x, y, z).times(1e-3);
  }

  private static HeatCurves curves(JsonNode p) {
    double rho = p.get("density").asDouble();
    double c = rho * p.get("specific_heat").asDouble();
    double latent = rho * p.get("latent_heat_J_kg").asDouble();
    double from = p.get("latent_released_linearly_between_degC").get(0).asDouble();
    double to = p.get("latent_released_linearly_between_degC").get(1).asDouble();
    return new HeatCurves(
        new double[] {0, to, from, 200},
        new double[] {0, to * c, from * c + latent, 200 * c + latent},
        new double[] {25},
        new double[] {p.get("conductivity").asDouble()});
  }

  private static Block block(JsonNode d, JsonNode faces) {
    JsonNode m = d.get("mould");
    MouldMaterial metal =
        new MouldMaterial(
            "aluminium",
            m.get("conductivity").asDouble(),
            m.get("density").asDouble(),
            m.get("specific_heat").asDouble());
    return new Block(
        metal,
        15e-3,
        Optional.empty(),
        m.get("start_degC").asDouble(),
        faces.get("air_degC").asDouble(),
        faces.get("h_W_m2K").asDouble(),
        d.get("contact_conductance_W_m2K").asDouble(),
        List.of(),
        List.of());
  }

  private static Watch run(
      JsonNode d,
      JsonNode faces,
      Box box,
      List<Labelled> solids,
      Mouth mouth,
      double dx,
      List<Vec3> probes,
      double firm) {
    Cavity cavity = CavityBuilder.build(solids, dx, Optional.of(mouth), Progress.NONE);
    VoxelModel model = MouldBuilder.build(cavity, block(d, faces), box);
    HeatCurves curves = curves(d.get("plastisol"));
    ThermalState state =
        new ThermalState(model, curves, d.get("plastisol").get("start_degC").asDouble());
    Watch watch = new Watch(cavity, probes);
    watch.see(state);
    ShotRun.Mouth shut = new ShotRun.Mouth(MouthFilm.INSULATED, 0, MouthFilm.INSULATED);
    new ShotRun(new SplitStepper(model, curves, Workers.SERIAL), shut, List.of(watch))
        .run(state, firm - 2, 1000, Progress.NONE);
    assertEquals(0, state.ledger.imbalance(), 1e-9);
    return watch;
  }

  private static Labelled bar(Cavity.Region region, Vec3 from, Vec3 to, double radius) {
    return new Labelled(region, Solids.cylinder(from, to, radius, radius, SEGMENTS));
  }

  @TestFactory
  List<DynamicTest> twoBulbs() throws IOException {
    JsonNode d = data("two-bulbs.json");
    List<Labelled> solids = new ArrayList<>();
    for (JsonNode b : d.get("shape_mm").get("balls")) {
      TriangleMesh ball =
          Solids.sphere(mm(b.get("centre")), b.get("radius").asDouble() * 1e-3, SEGMENTS);
      solids.add(new Labelled(Cavity.Region.PART, ball));
    }
    for (JsonNode b : d.get("shape_mm").get("bars")) {
      double r = b.get("radius").asDouble() * 1e-3;
      solids.add(bar(Cavity.Region.PART, mm(b.get("from")), mm(b.get("to")), r));
    }
    JsonNode block = d.get("shape_mm").get("block");
    Box box = new Box(mm(block.get("min")), mm(block.get("max")));
    Mouth mouth = new Mouth(mm(0, -24, 0), new Vec3(0, -1, 0), 4e-3);
    List<Vec3> probes = new ArrayList<>();
    d.get("reference").get("probes").forEach(p -> probes.add(mm(p.get("at_mm"))));

    Watch watch = run(d, d.get("outer_faces"), box, solids, mouth, 0.3e-3, probes, 90);

    List<Time> checks = new ArrayList<>();
    int at = 0;
    for (JsonNode p : d.get("reference").get("probes")) {
      String name = p.get("name").asText();
      double set = p.get("set_s").asDouble();
      boolean inside = name.contains("half") || name.contains("off") || name.contains("far");
      double share = (inside ? 0.02 : 0.01) + p.get("set_err_s").asDouble() / set;
      checks.add(new Time(name, set, watch.crossing(at++, 105), share));
    }
    double last = d.get("reference").get("last_below_firm").get("time_s").asDouble();
    checks.add(new Time("last below 90 degC", last, watch.lastBelow(90), 0.01));
    return checks.stream().map(Time::test).toList();
  }
}
