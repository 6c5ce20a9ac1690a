// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class RendererTest {
  private static final int BACKGROUND = 0xFBFAF6;
  private static final int NO_VALUE = 0x9AA3A6;
  private static final int SIZE = 64;

  /** A box's corners and triangles, outward, appended to what is there. */
  private static TriangleMesh boxes(double[]... fromTo) {
    double[] v = new double[24 * fromTo.length];
    int[] quads = {0, 2, 3, 1, 4, 5, 7, 6, 0, 1, 5, 4, 2, 6, 7, 3, 0, 4, 6, 2, 1, 3, 7, 5};
    int[] corners = new int[36 * fromTo.length];
    int n = 0;
    for (int b = 0; b < fromTo.length; b++) {
      for (int i = 0; i < 24; i++) {
        v[24 * b + i] = fromTo[b][i % 3 + (((i / 3) >> (i % 3)) % 2 == 0 ? 0 : 3)];
      }
      for (int q = 0; q < 24; q += 4) {
        for (int c : new int[] {0, 1, 2, 0, 2, 3}) {
          corners[n++] = 8 * b + quads[q + c];
        }
      }
    }
    return new TriangleMesh(v, corners);
  }

  /** Looks down the z axis on a cut at z = 0; the paint knows no value anywhere. */
  private static int[] seenFromAbove(TriangleMesh mesh) {
    View view =
        new View(
            Vec3.ZERO, new Vec3(1, 0, 0), new Vec3(0, 1, 0), new Vec3(0, 0, 1), 16, SIZE, SIZE);
    Volume far = Volume.of(new Vec3(100, 100, 100), 1, new int[] {1, 1, 1}, new int[] {0});
    float[] none = far.spread(new float[] {1});
    Paint paint = new Paint(far, none, none, new Scale(0, 1, 0.1), ColourRamp.STANDARD);
    return Renderer.draw(new ShownMesh(mesh), view, new Cut(Vec3.ZERO, new Vec3(0, 0, 1)), paint);
  }

  @Test
  void aSolidInsideAnotherLeavesTheCutFaceWhole() {
    double[] outer = {-1.5, -1.5, -1, 1.5, 1.5, 1};
    double[] below = {-0.5, -0.5, -0.8, 0.5, 0.5, -0.3};
    double[] through = {0.2, -1, -0.9, 1, 1, 0.9};

    int[] one = seenFromAbove(boxes(outer));
    int[] three = seenFromAbove(boxes(outer, below, through));

    assertEquals(NO_VALUE, one[SIZE / 2 * SIZE + SIZE / 2]);
    assertEquals(BACKGROUND, one[0]);
    assertTrue(Arrays.equals(one, three), "united, not each for itself");
  }

  @Test
  void skinIsSeenBesideTheCut() {
    int[] rgb = seenFromAbove(boxes(new double[] {-1, -1, -1, 1, 1, -0.2}));

    int middle = rgb[SIZE / 2 * SIZE + SIZE / 2];
    assertTrue(middle != NO_VALUE && middle != BACKGROUND, Integer.toHexString(middle));
  }
}
