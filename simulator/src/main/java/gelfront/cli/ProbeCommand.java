package gelfront.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.base.Quantities;
import gelfront.mesh.Vec3;
import gelfront.result.FieldProbe;
import gelfront.result.ResultException;
import gelfront.result.ResultFolder;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** probe RESULT --at x,y,z. */
@Command(
    name = "probe",
    mixinStandardHelpOptions = true,
    description = "Print set time, cut-off time and temperatures at places of a stored result.")
final class ProbeCommand implements Callable<Integer> {
  @Parameters(paramLabel = "RESULT", description = "result folder")
  private Path folder;

  @Option(
      names = "--at",
      paramLabel = "x,y,z",
      required = true,
      arity = "1..*",
      description = "places in mm, part coordinates; several may follow")
  private List<String> places;

  @Option(names = "--json", description = "as JSON")
  private boolean json;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    List<Vec3> points = places.stream().map(ProbeCommand::parse).toList();
    FieldProbe probe;
    try {
      probe = new FieldProbe(ResultFolder.read(folder).fields());
    } catch (ResultException e) {
      throw new InputException(e.getMessage());
    }
    PrintWriter out = spec.commandLine().getOut();
    ObjectMapper mapper = new ObjectMapper();
    ArrayNode all = mapper.createArrayNode();
    boolean missed = false;
    for (Vec3 p : points) {
      Optional<FieldProbe.Reading> r = probe.at(p);
      missed |= r.isEmpty();
      if (json) {
        tree(all.addObject(), p, r);
      } else {
        print(out, p, r);
      }
    }
    if (json) {
      out.println(mapper.writerWithDefaultPrettyPrinter().writeValueAsString(all));
    }
    return missed ? ExitCodes.BAD_INPUT : ExitCodes.OK;
  }

  private static Vec3 parse(String s) {
    String[] c = s.split(",", -1);
    try {
      if (c.length == 3) {
        return new Vec3(
                Double.parseDouble(c[0].trim()),
                Double.parseDouble(c[1].trim()),
                Double.parseDouble(c[2].trim()))
            .times(1e-3);
      }
    } catch (NumberFormatException e) {
      throw new InputException("--at " + s + ": not three numbers such as 40,0,0 (mm)");
    }
    throw new InputException("--at " + s + ": not three numbers such as 40,0,0 (mm)");
  }

  private static void print(PrintWriter out, Vec3 p, Optional<FieldProbe.Reading> reading) {
    String at = Quantities.say("(%.2f, %.2f, %.2f) mm", p.x() * 1e3, p.y() * 1e3, p.z() * 1e3);
    if (reading.isEmpty()) {
      out.println(at + ": no plastisol there");
      return;
    }
    FieldProbe.Reading r = reading.get();
    out.println(
        at + Quantities.say(": sets at %.2f s, cut off at %.2f s", r.setTime(), r.cutOff()));
    for (int i = 0; i < r.times().length; i++) {
      out.println(Quantities.say("  %8.2f s  %7.2f degC", r.times()[i], r.temperatures()[i]));
    }
  }

  private static void tree(ObjectNode n, Vec3 p, Optional<FieldProbe.Reading> reading) {
    n.putArray("at_mm").add(p.x() * 1e3).add(p.y() * 1e3).add(p.z() * 1e3);
    n.put("inside", reading.isPresent());
    if (reading.isEmpty()) {
      return;
    }
    FieldProbe.Reading r = reading.get();
    finite(n, "set_time_s", r.setTime());
    finite(n, "cut_off_s", r.cutOff());
    ArrayNode times = n.putArray("times_s");
    ArrayNode temperatures = n.putArray("temperatures_degC");
    for (int i = 0; i < r.times().length; i++) {
      times.add(r.times()[i]);
      temperatures.add(r.temperatures()[i]);
    }
  }

  private static void finite(ObjectNode n, String key, double v) {
    if (Double.isFinite(v)) {
      n.put(key, v);
    } else {
      n.putNull(key);
    }
  }
}
