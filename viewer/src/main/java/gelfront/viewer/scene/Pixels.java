// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

import com.jme3.renderer.Renderer;
import com.jme3.util.BufferUtils;
import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;

/** What the canvas shows, as a picture. */
final class Pixels {
  private Pixels() {}

  /** On the engine's thread, after all is rendered and before the buffers are swapped. */
  static BufferedImage of(Renderer renderer, int width, int height) {
    ByteBuffer rgba = BufferUtils.createByteBuffer(4 * width * height);
    renderer.setFrameBuffer(null);
    renderer.setViewPort(0, 0, width, height);
    renderer.readFrameBuffer(null, rgba);
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int at = 4 * (x + width * (height - 1 - y));
        int rgb =
            (rgba.get(at) & 255) << 16 | (rgba.get(at + 1) & 255) << 8 | (rgba.get(at + 2) & 255);
        picture.setRGB(x, y, rgb);
      }
    }
    return picture;
  }
}
