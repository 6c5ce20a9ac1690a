// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.answer.DentMap;
import gelfront.answer.Ran;
import gelfront.base.Quantities;
import gelfront.report.MapFiles;
import gelfront.report.MapPage;
import java.nio.file.Path;

/** A map as files in the study's folder and on the screen. */
record MapAnswer(Console console, Answers answers) {
  private static String slug(String words) {
    return words.replaceAll("[^a-z0-9]+", "-");
  }

  /** Writes and prints; where no run gave a result, the reason is all there is to tell. */
  void give(DentMap map, StudyDesk desk) {
    if (map.none() && map.present().outcome().isEmpty()) {
      throw new InputFailure(desk.base().file() + ": " + map.present().error());
    }
    String name = "map-" + slug(map.x().name()) + "-" + slug(map.y().name());
    desk.write(name + ".csv", MapFiles.csv(map));
    desk.write(name + ".json", MapFiles.json(map));
    Path page = desk.write(name + ".html", MapPage.of(map));
    print(map, page, desk);
  }

  private void print(DentMap map, Path page, StudyDesk desk) {
    if (answers.json()) {
      console.out().print(MapFiles.json(map));
      return;
    }
    if (!answers.quiet()) {
      table(map, "Deepest dent, mm (* not seen)", true);
      table(map, "Seconds until the mould is opened", false);
      console.out().println(desk.runs() + ".");
    }
    console.out().println(map.name() + ": " + MapPage.summary(map));
    console.out().println("Map: " + page);
  }

  private void table(DentMap map, String title, boolean dents) {
    console.out().println(title + ": " + map.x().title() + " across, " + map.y().title() + " down");
    StringBuilder head = new StringBuilder(" ".repeat(10));
    map.x().values().forEach(v -> head.append(Quantities.say("%10.4g", v)));
    console.out().println(head);
    for (int r = 0; r < map.runs().size(); r++) {
      StringBuilder line = new StringBuilder(Quantities.say("%10.4g", map.y().values().get(r)));
      map.runs().get(r).forEach(ran -> line.append(cell(map, ran, dents)));
      console.out().println(line);
    }
    console.out().println();
  }

  private static String cell(DentMap map, Ran ran, boolean dents) {
    if (ran.outcome().isEmpty()) {
      return "        --";
    }
    double v = dents ? ran.outcome().get().dentHigh() * 1e3 : ran.outcome().get().cycle();
    String mark = dents && map.safe(ran) ? "*" : " ";
    return Quantities.say(dents ? "%9.2f" : "%9.0f", v) + mark;
  }
}
