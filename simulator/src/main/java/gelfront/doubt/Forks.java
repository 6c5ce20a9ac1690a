// SPDX-License-Identifier: Apache-2.0
package gelfront.doubt;

import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import gelfront.study.Job;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the model could as well go another way, each tried for itself on the case as it is: liquid
 * drawn through short lands as much harder as the flow has been found too easy there (15 %, see the
 * decisions on the liquid's course), and contact that stays pressed on where the skin should have
 * left the wall. How the skin gives way, and how far a gelled core goes on pulling, are the low and
 * high bound of every dent.
 */
final class Forks {
  /** Share that short lands conduct too well. */
  private static final double LANDS = 0.15;

  private Forks() {}

  /** One job each, named by its words. */
  static List<Job> of(LoadedCase base) {
    List<Job> all = new ArrayList<>();
    if (!base.states("plastisol.viscosity") && base.setup().numerics().flow()) {
      double stiff = base.setup().plastisol().viscosityAt165() * (1 + LANDS);
      String stiffer = Change.quantity(stiff, "Pas");
      all.add(job("short lands let 15 % less through", base, "plastisol.viscosity_165", stiffer));
    }
    String pressed = Change.quantity(base.setup().block().contactConductance(), "W/m2K");
    all.add(job("skin that never leaves the wall", base, "block.contact_shrunk_off", pressed));
    return all;
  }

  private static Job job(String words, LoadedCase base, String key, String value) {
    return Job.of(words, base, List.of(new Change.Set(key, value))).quick();
  }
}
