// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.setup.CaseKeys;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists what a case file may hold. */
@Command(
    name = "keys",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Lists every key of a case file with its meaning, as a Markdown table.")
final class KeysCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private Answers answers;

  KeysCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (answers.json()) {
      ArrayNode list = Json.array();
      for (CaseKeys.Key k : CaseKeys.all()) {
        ObjectNode o = list.addObject();
        o.put("table", k.table());
        o.put("key", k.name());
        o.put("meaning", k.meaning());
      }
      console.out().println(Json.text(list));
    } else {
      console.out().print(CaseKeys.markdown());
    }
    return ExitCode.OK;
  }
}
