// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Changes files by chance: the same seed, the same changes. */
public final class Mutations {
  /** What readers stumble over. */
  private static final List<String> WORDS =
      List.of(
          "0",
          "-1",
          "1",
          "4294967295",
          "2147483647",
          "-2147483648",
          "99999999999999999999",
          "NaN",
          "Infinity",
          "1e999",
          "-1e-999",
          "1e38",
          "0x1p3",
          "1,5",
          "\"",
          "'",
          "<",
          ">",
          "&x;",
          "\0",
          "\r",
          "\n",
          "\\\n",
          "#",
          "[",
          "]",
          "{",
          "}",
          "=",
          "/",
          "//",
          "end",
          "solid",
          "\u00e9",
          "=cmd|' /C calc'!A0",
          "<script>",
          "../../x",
          "\u001b[2J");

  private final Random chance;

  public Mutations(long seed) {
    chance = new Random(seed);
  }

  /**
   * One to eight changes.
   *
   * @param other another file, of which pieces may be put in
   */
  public byte[] of(byte[] whole, byte[] other) {
    byte[] out = whole.clone();
    for (int n = 1 + chance.nextInt(8) * chance.nextInt(2); n > 0; n--) {
      out = change(out, other);
    }
    return out;
  }

  private byte[] change(byte[] b, byte[] other) {
    if (b.length == 0) {
      return other.clone();
    }
    int at = chance.nextInt(b.length);
    int n = Math.min(b.length - at, 1 + chance.nextInt(chance.nextInt(8) == 0 ? b.length : 16));
    switch (chance.nextInt(8)) {
      case 0 -> {
        b[at] ^= (byte) (1 << chance.nextInt(8));
        return b;
      }
      case 1 -> {
        b[at] = (byte) chance.nextInt(256);
        return b;
      }
      case 2 -> {
        return Arrays.copyOf(b, at);
      }
      case 3 -> {
        return put(b, at, at + n, new byte[0]);
      }
      case 4 -> {
        return put(b, at, at, Arrays.copyOfRange(b, at, at + n));
      }
      case 5 -> {
        int from = chance.nextInt(Math.max(1, other.length));
        return put(b, at, at, Arrays.copyOfRange(other, from, Math.min(other.length, from + n)));
      }
      case 6 -> {
        String w = WORDS.get(chance.nextInt(WORDS.size()));
        return put(b, at, wordEnd(b, at), w.getBytes(StandardCharsets.UTF_8));
      }
      default -> {
        for (int i = at; i < Math.min(b.length, at + 4); i++) {
          b[i] = (byte) (chance.nextBoolean() ? 0xFF : 0);
        }
        return b;
      }
    }
  }

  private static int wordEnd(byte[] b, int from) {
    int at = from;
    while (at < b.length && at < from + 40 && b[at] > ' ' && b[at] != '"') {
      at++;
    }
    return at;
  }

  private static byte[] put(byte[] b, int from, int to, byte[] middle) {
    byte[] out = Arrays.copyOf(b, b.length - to + from + middle.length);
    System.arraycopy(middle, 0, out, from, middle.length);
    System.arraycopy(b, to, out, from + middle.length, b.length - to);
    return out;
  }
}
