// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Dimension;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Channels drilled for a coolant: [[block.channel]]. */
final class ChannelReader {
  private static final double COLDEST = -30;
  private static final double HOTTEST = 100;

  /** W/m2 K, boiling water included. */
  private static final double MOST = 20_000;

  /** Metres between the ends of what is no channel. */
  private static final double SHORTEST = 1e-3;

  private ChannelReader() {}

  static List<Block.Channel> read(List<CaseTable> tables) {
    List<Block.Channel> channels = new ArrayList<>();
    for (CaseTable t : tables) {
      Optional<Vec3> from = end(t, "from");
      Optional<Vec3> to = end(t, "to");
      double diameter = t.need("diameter", Dimension.LENGTH, 1e-3, 0.1);
      double film = t.need("film", Dimension.FILM, 0, MOST);
      double temperature = t.need("temperature", Dimension.TEMPERATURE, COLDEST, HOTTEST);
      boolean sound = diameter > 0 && film >= 0 && !Double.isNaN(temperature);
      if (from.isPresent() && to.isPresent() && apart(t, from.get(), to.get()) && sound) {
        channels.add(new Block.Channel(from.get(), to.get(), diameter, film, temperature));
      }
    }
    return channels;
  }

  private static Optional<Vec3> end(CaseTable t, String key) {
    if (!t.has(key)) {
      t.mistake("", "[[block.channel]] needs " + key + ", the middle of one of its ends");
    }
    return t.place(key);
  }

  private static boolean apart(CaseTable t, Vec3 from, Vec3 to) {
    boolean apart = from.distance(to) >= SHORTEST;
    if (!apart) {
      t.mistake("to", "the channel has no length: from and to are the same place");
    }
    return apart;
  }
}
