package gelfront.cli;

import gelfront.base.Quantities;
import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import java.util.Locale;
import java.util.function.Function;

/** What conduction alone says and what the flow says, side by side. */
final class FlowTable {
  private final Console console;

  FlowTable(Console console) {
    this.console = console;
  }

  void print(Findings alone, Findings withFlow) {
    console.out().println();
    line("", "conduction alone", "with flow");
    row("no more feeding from", alone, withFlow, f -> seconds(f.fed().halfAt()));
    row("gate closes", alone, withFlow, f -> seconds(f.gateSets()));
    row("part has set", alone, withFlow, f -> seconds(f.partSets()));
    row("unfed", alone, withFlow, f -> Quantities.ml(f.fed().unfed()));
    row("deepest dent", alone, withFlow, FlowTable::deepest);
    row("verdict", alone, withFlow, f -> f.severity().name().toLowerCase(Locale.ROOT));
  }

  private void row(String what, Findings a, Findings b, Function<Findings, String> of) {
    line(what, of.apply(a), of.apply(b));
  }

  private void line(String what, String a, String b) {
    console
        .out()
        .println(String.format(Locale.ROOT, "  %-22s %-20s %s", what, a, b).stripTrailing());
  }

  private static String seconds(double t) {
    return Double.isFinite(t) ? Quantities.say("%.1f s", t) : "never";
  }

  private static String deepest(Findings f) {
    return f.pockets().stream()
        .map(Pocket::dents)
        .filter(d -> !d.isEmpty())
        .findFirst()
        .map(
            d ->
                Quantities.say(
                    "%.2f to %.2f mm", 1e3 * d.get(0).depthLow(), 1e3 * d.get(0).depthHigh()))
        .orElse("none");
  }
}
