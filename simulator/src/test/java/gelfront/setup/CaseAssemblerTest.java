// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What only several tables together show: temperatures and times that contradict one another. */
final class CaseAssemblerTest {
  private static void told(String text, String words) {
    String found = Cases.words(Cases.mistakes(text));
    assertTrue(found.contains(words), () -> words + "\nis not in\n" + found);
  }

  private static String shot(String line) {
    return Cases.with("shot", line);
  }

  @Test
  void whatContradictsItselfIsTold() {
    String series = "cycle = \"50 s\"\nidle = \"44 s\"\nopen = \"20 s\"";
    told(
        Cases.with("series", series),
        "opens the mould at 6 s, while the injector is still on it until 7 s");
    told(
        Cases.with("series", "cycle = \"300 s\"")
            .replace("165 degC\"", "165 degC\"\nopen_at = \"90 s\""),
        "shot.open_at says when the mould is opened: state one of both");
    told(
        Cases.with("fill", "on = true").replace("165 degC\"", "165 degC\"\nfill_time = \"0 s\""),
        "a fill time of zero can't be calculated");
    told(
        Cases.SOUND + "[[filing]]\nreach = \"2 mm\"\ndepth = \"1 mm\"\n", "[[filing]] needs at = ");
    assertEquals(
        7,
        Cases.read(Cases.with("series", series.replace("44", "43")))
            .rhythm()
            .opensAt()
            .getAsDouble());
  }

  @Test
  void warningsBeginBeyondTheirTemperatures() {
    String shot = Cases.SOUND.replace("165 degC", "190 degC");
    assertTrue(Cases.read(shot).warnings().isEmpty());
    assertEquals(1, Cases.read(shot.replace("190", "190.5")).warnings().size());
    String mould = Cases.with("block", "start = \"59.5 degC\"");
    assertTrue(Cases.read(mould).warnings().isEmpty());
    assertEquals(1, Cases.read(mould.replace("59.5", "60")).warnings().size());
    assertEquals(1, Cases.read(mould.replace("59.5", "100")).warnings().size());
    assertEquals(2, Cases.read(mould.replace("59.5", "100.5")).warnings().size());
  }

  /** At the no-flow temperature nothing flows any more. */
  @Test
  void aShotIsHotterThanWhereNothingFlows() {
    String own = Cases.with("plastisol", "no_flow = \"120 degC\"");

    told(own.replace("165 degC", "120 degC"), "the shot (120 °C) is no hotter than the no-flow");
    assertEquals(121, Cases.read(own.replace("165 degC", "121 degC")).shot().temperature());
  }

  /** Filled in 2 s and pressed for 5: then the injector is off. */
  @Test
  void aMouldIsOpenedOnceTheInjectorIsOff() {
    told(shot("open_at = \"6.9 s\""), "while the injector is still on it until 7 s");
    assertEquals(7, Cases.read(shot("open_at = \"7 s\"")).opensAt().getAsDouble());
  }

  @Test
  void toppingUpComesWithinTheHour() {
    String words = "times of topping up lie between 0 and an hour after the shot";

    told(shot("top_up = [\"9 s\", \"0 s\"]"), words);
    told(shot("top_up = \"60 min\""), words);
    assertEquals(
        List.of(0.1, 3599.0), Cases.read(shot("top_up = [\"0.1 s\", \"3599 s\"]")).shot().topUps());
  }

  /** The part would never be firm, as with air that hot. */
  @Test
  void aCoolantIsColderThanAFirmPart() {
    String channel =
        """
        [[block.channel]]
        from = ["-20 mm", "0 mm", "20 mm"]
        to = ["80 mm", "0 mm", "20 mm"]
        diameter = "8 mm"
        film = "2000 W/m2K"
        temperature = "60 degC"
        """;

    told(
        Cases.SOUND + channel,
        "what runs through a channel (60 °C) must be colder than 60 °C, at which the part is firm");
    Block block = Cases.read(Cases.SOUND + channel.replace("60 degC", "59 degC")).block();
    assertEquals(59, block.channels().get(0).temperature());
  }
}
