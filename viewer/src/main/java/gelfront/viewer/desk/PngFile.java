// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** A picture as a file. */
public final class PngFile {
  private PngFile() {}

  /** Made in memory first: given a file it can't open, ImageIO prints a stack trace. */
  public static void write(BufferedImage picture, Path file) throws IOException {
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    ImageIO.write(picture, "png", png);
    Files.write(file, png.toByteArray());
  }
}
