// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Quantities;
import gelfront.mesh.Vec3;

/** The text of a first case file for a mesh, with comments for somebody who has never seen one. */
final class StarterCase {
  private StarterCase() {}

  /**
   * Gate and sprue declared.
   *
   * @param name of the part
   * @param mesh file name
   * @param unit mm, cm, m or inch
   * @param gate a point on the part's surface, metres
   * @param direction away from the part there
   * @param gateSize guessed width, metres
   * @param sprueSize guessed diameter, metres
   */
  static String text(
      String name,
      String mesh,
      String unit,
      Vec3 gate,
      Vec3 direction,
      double gateSize,
      double sprueSize) {
    String feed =
        """

        [gate]                   # guessed at the thick end; move it where you want to cut it
        at = %s
        direction = [%s, %s, %s]    # away from the part
        shape = "round"          # round, half-round or rectangular (then add height)
        size = "%s"
        land = "3 mm"            # length of the narrow part

        [sprue]
        diameter = "%s"
        length = "28 mm"
        """
            .formatted(
                place(gate),
                number(direction.x()),
                number(direction.y()),
                number(direction.z()),
                Quantities.mm(gateSize),
                Quantities.mm(sprueSize));
    return head(name, mesh, unit) + feed + rest();
  }

  /**
   * Gate and sprue part of the mesh.
   *
   * @param mouth a point on the pour opening, metres
   * @param gate a point in the gate, metres
   */
  static String withFeed(String name, String mesh, String unit, Vec3 mouth, Vec3 gate) {
    String feed =
        """

        [feed]                   # gate and sprue seem to be part of the mesh
        in_mesh = true
        mouth = %s    # guessed: the pour opening
        gate = %s    # guessed: the narrowest place behind it

        # [[filing]]             # what filing the gate open would do, metal off all round
        # at = %s
        # reach = "4 mm"
        # depth = "0.5 mm"
        """
            .formatted(place(mouth), place(gate), place(gate));
    return head(name, mesh, unit) + feed + rest();
  }

  private static String head(String name, String mesh, String unit) {
    return """
        # A case: one part, its gate and sprue, the mould and the recipe.
        # Lengths like "3 mm" or "0.5 in", temperatures like "165 degC" or "330 degF".
        # What you leave out is filled in; the report lists it. Change a number, run the check again.
        name = %s

        [part]
        mesh = %s
        unit = "%s"            # of the mesh: mm, cm, m or inch
        """
        .formatted(Change.text(name), Change.text(mesh), unit);
  }

  private static String rest() {
    return """

        [block]
        material = "aluminium-6061"
        wall = "15 mm"           # metal round the cavity
        start = "30 degC"        # the mould before the shot

        [plastisol]
        grade = "soft"           # soft, medium or firm
        # no_flow = "125 degC"   # the least known value: 100 to 150 is possible

        [shot]
        temperature = "165 degC" # never above 190 degC: fumes
        hold_time = "5 s"        # injector kept on the sprue
        # injector = "100 ml"

        [numerics]
        level = "normal"         # quick, normal or fine
        """;
  }

  private static String place(Vec3 p) {
    return "[" + length(p.x()) + ", " + length(p.y()) + ", " + length(p.z()) + "]";
  }

  private static String length(double metres) {
    return Change.text(Quantities.say("%.3f mm", metres * 1e3 + 0.0));
  }

  private static String number(double v) {
    return Quantities.say("%.4f", v + 0.0);
  }
}
