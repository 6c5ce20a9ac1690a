// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.base.Quantities;
import gelfront.mesh.Vec3;
import gelfront.result.FieldProbe;
import gelfront.result.ResultFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Stack;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.IParameterConsumer;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** Reads values of a stored result at places, for instance where a thermocouple sat. */
@Command(
    name = "probe",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Set time, cut-off time and temperatures at places of a result, interpolated between voxels.",
      "Ends with 3 if a place lies outside the plastisol; the others are answered all the same."
    })
final class ProbeCommand implements Callable<Integer> {
  private static final double MM = 1e-3;

  private final Console console;

  @Parameters(paramLabel = "RESULT", description = "The result folder.")
  private Path result;

  @Option(
      names = "--at",
      required = true,
      paramLabel = "x,y,z",
      parameterConsumer = Places.class,
      description = "Places in mm, in the part's coordinates; several may follow.")
  private List<Vec3> places = new ArrayList<>();

  @Mixin private Answers answers;

  ProbeCommand(Console console) {
    this.console = console;
  }

  /** Takes what follows as long as it looks like x,y,z; so the result may stand before or after. */
  static final class Places implements IParameterConsumer {
    @Override
    public void consumeParameters(Stack<String> args, ArgSpec arg, CommandSpec command) {
      List<Vec3> all = arg.getValue();
      int before = all.size();
      while (!args.isEmpty() && args.peek().matches("[-+0-9.eE ]+(,[-+0-9.eE ]*)+")) {
        String text = args.pop();
        all.add(
            place(text)
                .orElseThrow(
                    () ->
                        new ParameterException(
                            command.commandLine(), "--at " + text + ": write x,y,z in mm")));
      }
      if (all.size() == before) {
        throw new ParameterException(
            command.commandLine(),
            "--at " + (args.isEmpty() ? "" : args.peek() + ": ") + "needs a place: x,y,z in mm");
      }
    }

    private static Optional<Vec3> place(String text) {
      String[] part = text.split(",", -1);
      if (part.length != 3) {
        return Optional.empty();
      }
      try {
        return Optional.of(new Vec3(mm(part[0]), mm(part[1]), mm(part[2])));
      } catch (NumberFormatException e) {
        return Optional.empty();
      }
    }

    private static double mm(String number) {
      return Double.parseDouble(number.trim()) * MM;
    }
  }

  @Override
  public Integer call() throws IOException {
    FieldProbe probe = new FieldProbe(ResultFolder.read(result).fields());
    List<Optional<FieldProbe.Reading>> readings = places.stream().map(probe::at).toList();
    if (answers.json()) {
      ArrayNode list = Json.array();
      for (int i = 0; i < places.size(); i++) {
        list.add(json(places.get(i), readings.get(i)));
      }
      console.out().println(Json.text(list));
    } else {
      for (int i = 0; i < places.size(); i++) {
        print(places.get(i), readings.get(i));
      }
    }
    return readings.stream().allMatch(Optional::isPresent) ? ExitCode.OK : ExitCode.INPUT;
  }

  private static ObjectNode json(Vec3 place, Optional<FieldProbe.Reading> reading) {
    ObjectNode o = Json.object();
    o.set("at_mm", Json.mm(place));
    o.put("inside", reading.isPresent());
    reading.ifPresent(
        r -> {
          o.put("region", r.region().name().toLowerCase(Locale.ROOT));
          o.put("pocket", r.pocket());
          Json.put(o, "set_time_s", r.setTime());
          Json.put(o, "cut_off_s", r.cutOff());
          o.set("times_s", Json.numbers(r.times()));
          o.set("temperatures_degC", Json.numbers(r.temperatures()));
        });
    return o;
  }

  private void print(Vec3 p, Optional<FieldProbe.Reading> reading) {
    String at = Quantities.say("(%.2f, %.2f, %.2f) mm: ", p.x() / MM, p.y() / MM, p.z() / MM);
    if (reading.isEmpty()) {
      console.out().println(at + "outside the plastisol");
      return;
    }
    FieldProbe.Reading r = reading.get();
    String pocket = r.pocket() > 0 ? ", pocket " + r.pocket() : "";
    console.out().println(at + r.region().name().toLowerCase(Locale.ROOT) + pocket);
    console
        .out()
        .println(
            Double.isInfinite(r.setTime())
                ? "  has not set"
                : Quantities.say("  sets at %.2f s, cut off at %.2f s", r.setTime(), r.cutOff()));
    if (!answers.quiet()) {
      for (int i = 0; i < r.times().length; i++) {
        console
            .out()
            .println(Quantities.say("  %8.2f s  %6.1f °C", r.times()[i], r.temperatures()[i]));
      }
    }
  }
}
