package gelfront.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.base.Quantities;
import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.check.MeshCheck;
import gelfront.mesh.check.MeshRepair;
import gelfront.mesh.check.MeshReport;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** inspect MESH. */
@Command(
    name = "inspect",
    mixinStandardHelpOptions = true,
    description = "Say whether a mesh can be used, and what is wrong with it.")
final class InspectCommand implements Callable<Integer> {
  @Parameters(paramLabel = "MESH", description = "STL file")
  private Path file;

  @Option(names = "--unit", description = "mm, cm, m or inch")
  private String unit;

  @Option(names = "--json", description = "as JSON")
  private boolean json;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    TriangleMesh mesh = MeshFiles.read(file, Units.of(unit));
    MeshReport report = MeshCheck.inspect(mesh);
    List<String> reasons = new ArrayList<>(report.reasons());
    MeshReport.Verdict verdict = report.verdict();
    double volume = report.volume();
    try {
      var prepared = MeshRepair.prepare(mesh, MeshRepair.WELD);
      reasons.addAll(prepared.repairs());
      volume = prepared.mesh().volume();
      verdict = reasons.isEmpty() ? MeshReport.Verdict.OK : MeshReport.Verdict.WARNING;
    } catch (MeshException e) {
      verdict = MeshReport.Verdict.REFUSED;
      if (!reasons.contains(e.getMessage())) {
        reasons.add(e.getMessage());
      }
    }
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.println(tree(report, verdict, reasons, volume));
    } else {
      print(out, report, verdict, reasons, volume);
    }
    return verdict == MeshReport.Verdict.REFUSED ? ExitCodes.BAD_INPUT : ExitCodes.OK;
  }

  private static String tree(
      MeshReport r, MeshReport.Verdict verdict, List<String> reasons, double volume)
      throws Exception {
    ObjectMapper mapper = new ObjectMapper();
    ObjectNode n = mapper.createObjectNode();
    n.put("verdict", verdict.name().toLowerCase(Locale.ROOT));
    reasons.forEach(n.putArray("reasons")::add);
    n.put("triangles", r.triangles());
    n.put("shells", r.shells().size());
    n.put("closed", r.closed());
    n.put("open_edges", r.openEdges());
    n.put("holes", r.holes());
    n.put("zero_area", r.zeroArea());
    n.put("duplicates", r.duplicates());
    n.put("overlaps", r.overlaps().size());
    n.put("volume_mm3", volume * 1e9);
    n.put("area_mm2", r.area() * 1e6);
    ObjectNode box = n.putObject("box");
    add(box.putArray("min_mm"), r.box().min());
    add(box.putArray("max_mm"), r.box().max());
    return mapper.writerWithDefaultPrettyPrinter().writeValueAsString(n);
  }

  private static void add(ArrayNode a, Vec3 p) {
    a.add(p.x() * 1e3).add(p.y() * 1e3).add(p.z() * 1e3);
  }

  private void print(
      PrintWriter out,
      MeshReport r,
      MeshReport.Verdict verdict,
      List<String> reasons,
      double volume) {
    out.println(
        file.getFileName()
            + ": "
            + switch (verdict) {
              case OK -> "good";
              case WARNING -> "usable, look at it";
              case REFUSED -> "can't be used";
            });
    reasons.forEach(s -> out.println("- " + s));
    Vec3 size = r.box().size();
    out.println(
        Quantities.say(
            "%,d triangles in %d shells, %.1f x %.1f x %.1f mm, volume %.3f ml, area %.1f cm2",
            r.triangles(),
            r.shells().size(),
            size.x() * 1e3,
            size.y() * 1e3,
            size.z() * 1e3,
            volume * 1e6,
            r.area() * 1e4));
  }

  /** Units as options name them. */
  static final class Units {
    private Units() {}

    static Optional<LengthUnit> of(String word) {
      if (word == null) {
        return Optional.empty();
      }
      try {
        return Optional.of(LengthUnit.valueOf(word.toUpperCase(Locale.ROOT)));
      } catch (IllegalArgumentException e) {
        throw new InputException("unknown unit \"" + word + "\": mm, cm, m or inch");
      }
    }
  }
}
