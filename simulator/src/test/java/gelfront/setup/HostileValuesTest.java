// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Caution;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values that slips of unit, sign, decimals and keyboard leave behind, each with its verdict. */
final class HostileValuesTest {
  /**
   * Puts a line into a table of the sound case, in place of the one of that key if it has one.
   *
   * @param table empty for the head of the file
   */
  private static String set(String table, String line) {
    String key = line.replaceFirst("\\s*=.*", "");
    String head = table.isEmpty() ? "" : Pattern.quote("[" + table + "]\n") + "(?:[^\\[\n].*\n)*?";
    String own = Cases.SOUND.replaceFirst("(" + head + ")" + key + " = .*\n", "$1");
    String opened = "[" + table + "]\n";
    return table.isEmpty()
        ? line + "\n" + own
        : own.contains(opened)
            ? own.replace(opened, opened + line.replace("; ", "\n") + "\n")
            : own + opened + line.replace("; ", "\n") + "\n";
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        // Fahrenheit given as Celsius and the reverse
        "shot | temperature = \"330 degC\" | did you mean 330 degF?",
        "shot | temperature = \"165 degF\" | did you mean 165 degC?",
        "shot | temperature = \"165 K\" | did you mean 165 degC?",
        "shot | temperature = \"110 degC\" | no hotter than the no-flow temperature (125 °C)",
        "block | start = \"86 K\" | out of range: -30 degC to 180 degC; did you mean 86 degC?",
        "block | air = \"73 degC\" | out of range: -30 degC to 60 degC; did you mean 73 degF?",
        "block | air = \"60 degC\" | the air (60 °C) must be colder than 60 °C",
        "plastisol | no_flow = \"257 degC\" | did you mean 257 degF?",
        // densities, heats and conductivities in other units
        "plastisol | density_hot = \"0.935 kg/m3\" | did you mean 0.935 g/cm3?",
        "plastisol | density_hot = \"935 g/cm3\" | did you mean 935 kg/m3?",
        "plastisol | density_hot = \"1100 kg/m3\" | must lie below density_cold (1030 kg/m3)",
        "plastisol | density_cold = \"900 kg/m3\" | density_hot (935 kg/m3) must lie below",
        "plastisol | expansion_hot = \"-7.5e-4 1/K\" | plastisol must shrink as it cools",
        "plastisol | expansion_gelled = \"-7e-4 1/K\" | plastisol must shrink as it cools",
        "plastisol | no_flow = \"170 degC\" | no hotter than the no-flow temperature (170 °C)",
        "plastisol | specific_heat = \"1.9 J/kgK\" | did you mean 1.9 kJ/kgK?",
        "plastisol | conductivity = \"145 W/mK\" | out of range: 0.02 W/mK to 2 W/mK",
        "plastisol | gel_end = \"140 degC\" | gel_end (140 °C) must lie below gel_start (135 °C)",
        "plastisol | gel_end = \"135 degC\" | gel_end (135 °C) must lie below gel_start (135 °C)",
        "plastisol | firm = \"130 degC\" | firm (130 °C) must lie below no_flow (125 °C)",
        "plastisol | no_flow = \"50 degC\" | firm (60 °C) must lie below no_flow (50 °C)",
        "plastisol | filler = \"sugar\"; filler_share = \"5 %\" | is none of glitter",
        "plastisol | filler = \"salt\"; filler_share = \"60 %\" | out of range: 0 % to 50 %",
        "plastisol | filler = \"salt\"; filler_share = 0.05 | has no unit",
        "plastisol | filler = \"hollow-spheres\"; filler_share = \"50 %\" | 79 % of the volume",
        "plastisol | filler_share = \"5 %\" | a filler share without a filler",
        // lengths
        "gate | size = \"0 mm\" | out of range: 0.3 mm to 50 mm",
        "gate | size = \"-2.5 mm\" | out of range",
        "gate | size = \"2.5 m\" | did you mean 2.5 mm?",
        "gate | size = \"2.5 in\" | did you mean 2.5 mm?",
        "gate | size = \"1e-9 mm\" | out of range",
        "gate | size = \"1e400 mm\" | is not a finite value",
        "gate | size = \"1/0 in\" | is not a finite value",
        "gate | size = nan | not a finite number",
        "gate | size = inf | not a finite number",
        "gate | size = -inf | not a finite number",
        "gate | size = \"NaN mm\" | is not a quantity",
        "gate | size = \"2,5 mm\" | decimal comma",
        "gate | size = \"2.5\" | has no unit",
        "gate | size = 2.5 | has no unit",
        "gate | size = \"\" | is not a quantity",
        "gate | size = \"wide\" | is not a quantity",
        "gate | size = true | must be a quantity",
        "gate | size = [2.5] | must be a quantity",
        "gate | size = 1979-05-27 | must be a quantity",
        "gate | size = \"2.5 degC\" | is not a unit of length",
        "gate | shape = \"rond\" | did you mean \"round\"?",
        "gate | shape = \"rectangular\" | a rectangular section needs a height",
        "gate | height = \"2 mm\" | only a rectangular section has a height",
        "gate | at = [\"0 mm\", \"0 mm\"] | must be three values",
        "gate | at = [\"0 mm\", \"0 mm\", \"20 m\"] | lies more than 10 m away",
        "gate | at = [\"0 mm\", \"0 mm\", \"1e300 m\"] | lies more than 10 m away",
        "gate | at = \"0 mm\" | must be three values",
        "gate | direction = [0, 0, 0] | must point somewhere",
        "gate | direction = [nan, 0, 0] | must be three numbers",
        "gate | direction = [inf, 0, 0] | must point somewhere",
        "gate | direction = [1e-200, 0, 0] | must point somewhere",
        "gate | direction = [\"1 mm\", 0, 0] | must be three numbers",
        "gate | direction = [1, 0] | must be three values",
        "sprue | length = \"0 mm\" | out of range",
        "sprue | mouth_diameter = \"9 mm\"; taper = \"4 deg\" | both mouth_diameter and taper",
        "sprue | taper = \"60 deg\" | out of range: 0 deg to 34.38 deg",
        "block | wall = \"0 mm\" | out of range",
        "block | wall = \"1 km\" | is not a unit of length",
        "block | box_min = [\"0 mm\", \"0 mm\", \"0 mm\"] | box_min and box_max go together",
        "block | air_film = \"-1 W/m2K\" | out of range",
        "block | contact = \"0 W/m2K\" | out of range",
        "block | material = \"brass \" | did you mean \"brass\"?",
        "block | material = 3 | must be a text in quotes",
        // times, counts, pressures
        "shot | hold_time = \"-5 s\" | out of range: 0 s to 600 s",
        "shot | hold_time = \"5 h\" | out of range: 0 s to 600 s; did you mean 5 s?",
        "shot | fill_time = \"1e9 s\" | out of range",
        "shot | hold_pressure = \"21 bar\" | out of range: 0 kPa to 2000 kPa",
        "shot | hold_pressure = \"3 MPa\" | did you mean 3 Pa?",
        "shot | open_at = \"3 s\" | while the injector is still on it until 7 s",
        "shot | top_up = [\"-1 s\"] | between 0 and an hour",
        "shot | top_up = [\"2 h\"] | between 0 and an hour",
        "shot | top_up = [3] | has no unit",
        "shot | injector = \"100 l\" | did you mean 100 ml?",
        "'' | cavities = 0 | whole number from 1 to 1000",
        "'' | cavities = -1 | whole number from 1 to 1000",
        "'' | cavities = 1.5 | whole number from 1 to 1000",
        "'' | cavities = 9223372036854775807 | whole number from 1 to 1000",
        "'' | cavities = \"two\" | whole number from 1 to 1000",
        "'' | clamping_force = \"2 GN\" | is not a unit of force",
        "'' | clamping_force = \"0 N\" | out of range",
        "'' | name = 3 | must be a text in quotes",
        "'' | up = \"z\" | must be three values",
        "numerics | voxel = \"1e-9 mm\" | out of range: 0.02 mm to 5 mm",
        "numerics | voxel = \"0.5 in\" | did you mean 0.5 mm?",
        "numerics | level = \"FINE\" | did you mean \"fine\"?",
        "numerics | level = \"ultra\" | is none of quick, normal, fine",
      })
  void isRefusedAtItsLine(String where, String line, String told) {
    String table = where.equals("''") ? "" : where;
    String text = set(table, line);

    List<Mistake> found = Cases.mistakes(text);

    assertEquals(1, found.size(), () -> Cases.words(found));
    Mistake m = found.get(0);
    assertTrue(m.message().contains(told), m.message());
    String key = text.lines().toList().get(m.line() - 1).replaceFirst("\\s*=.*", "");
    assertTrue(line.contains(key), () -> "told at " + key + ": " + m.message());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "shot | temperature = \"195 degC\" | hotter than 190 °C",
        "block | start = \"120 degC\" | hotter than 100 °C",
        "block | start = \"86 degC\" | Is the temperature stated in the right unit?",
        "plastisol | filler = \"hollow-spheres\"; filler_share = \"20 %\" | 48 % of the volume",
        "plastisol | filler = \"salt\"; filler_share = \"50 %\" | 30 % of the volume",
      })
  void isCalculatedWithAWarning(String table, String line, String told) {
    List<Caution> warnings = Cases.read(set(table, line)).warnings();

    assertTrue(warnings.stream().anyMatch(w -> w.metric().contains(told)), () -> "" + warnings);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "shot | temperature = \"330 degF\"",
        "shot | temperature = \"438 K\"",
        "block | start = \"86 degF\"",
        "plastisol | density_hot = \"0.94 g/cm3\"",
        "plastisol | filler = \"salt\"; filler_share = \"5 %\"",
        "gate | size = \"1/8 in\"",
        "gate | size = \"0.1\\\"\"",
        "gate | direction = [1e-5, 0, 0]",
        "shot | injector = \"4 oz\"",
        "shot | hold_time = \"0 s\"",
        "'' | name = \"<b>=1+1\"",
      })
  void isWhatPeopleWriteAndIsRead(String where, String line) {
    assertEquals(List.of(), Cases.read(set(where.equals("''") ? "" : where, line)).warnings());
  }
}
