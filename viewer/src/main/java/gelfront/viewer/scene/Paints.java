// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

import com.jme3.asset.AssetManager;
import com.jme3.material.Material;
import com.jme3.material.RenderState.BlendMode;
import com.jme3.material.RenderState.FaceCullMode;
import com.jme3.math.ColorRGBA;
import com.jme3.math.FastMath;
import com.jme3.math.Vector4f;
import com.jme3.texture.Image;
import com.jme3.texture.Image.Format;
import com.jme3.texture.Texture;
import com.jme3.texture.Texture2D;
import com.jme3.texture.Texture3D;
import com.jme3.texture.image.ColorSpace;
import com.jme3.util.BufferUtils;
import gelfront.viewer.model.Colours;
import gelfront.viewer.model.VolumeTexels;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;

/** Materials of the scene. One for each side of a pair, for each has its own values. */
final class Paints {
  private static final String FOLDER = "gelfront/viewer/scene/";

  private final AssetManager assets;

  Paints(AssetManager assets) {
    this.assets = assets;
  }

  /** Cut open by the plane; inside dark. */
  Material skin(int rgb) {
    Material m = new Material(assets, FOLDER + "Skin.j3md");
    m.setColor("Color", colour(rgb, 1));
    m.setVector4("Plane", new Vector4f(0, 0, 0, -1));
    m.getAdditionalRenderState().setFaceCullMode(FaceCullMode.Off);
    return m;
  }

  /** Seen through. */
  Material clear(int rgb, float alpha) {
    Material m = skin(rgb);
    m.setColor("Color", colour(rgb, alpha));
    m.getAdditionalRenderState().setBlendMode(BlendMode.Alpha);
    m.getAdditionalRenderState().setDepthWrite(false);
    m.getAdditionalRenderState().setFaceCullMode(FaceCullMode.Back);
    return m;
  }

  /** Coloured by its values. */
  Material skin(int rgb, Texture palette) {
    Material m = skin(rgb);
    m.setTexture("Palette", palette);
    return m;
  }

  /** The face of a cut. */
  Material cap(Filling filling) {
    Material m = new Material(assets, FOLDER + "Cap.j3md");
    filling.into(m);
    m.getAdditionalRenderState().setFaceCullMode(FaceCullMode.Off);
    // Walls of solids that run into each other end in it: without that they shine through in
    // dashes. A wall seen edge-on runs through millimetres of depth within a pixel, and how exactly
    // depends on the machine: 64 steps of the depth, under 0.1 mm, are well beyond that; 2 weren't.
    m.getAdditionalRenderState().setPolyOffset(-1, -64);
    return m;
  }

  /**
   * What a cut shows.
   *
   * @param volume of {@code texels}
   * @param ramp of times
   * @param later colour of what hasn't come to its time, 0xRRGGBB
   */
  record Filling(Texture volume, VolumeTexels texels, Texture ramp, int later) {
    Filling(VolumeTexels texels, Texture ramp, int later) {
      this(Paints.volume(texels), texels, ramp, later);
    }

    /** A skin that has it shows the cut where it is seen from within. */
    Material into(Material m) {
      m.setTexture("Volume", volume);
      m.setTexture("Ramp", ramp);
      m.setVector3("Low", Meshes.vector(texels.low()));
      m.setVector3("Size", Meshes.vector(texels.size()));
      m.setColor("Liquid", colour(later, 1));
      m.setColor("Shut", colour(Colours.SHUT, 1));
      return m;
    }
  }

  Material cells(Texture palette) {
    Material m = new Material(assets, FOLDER + "Cells.j3md");
    m.setTexture("Palette", palette);
    m.setVector4("Plane", new Vector4f(0, 0, 0, -1));
    return m;
  }

  /** The far side of a body: what lies in it keeps its own colour, as the legend has it. */
  Material glass() {
    Material m = new Material(assets, FOLDER + "Ghost.j3md");
    m.setColor("Color", new ColorRGBA(0.93f, 0.96f, 1, 1));
    m.getAdditionalRenderState().setFaceCullMode(FaceCullMode.Front);
    m.getAdditionalRenderState().setBlendMode(BlendMode.Alpha);
    m.getAdditionalRenderState().setDepthWrite(false);
    return m;
  }

  Material plain(int rgb) {
    Material m = new Material(assets, "Common/MatDefs/Misc/Unshaded.j3md");
    m.setColor("Color", colour(rgb, 1));
    return m;
  }

  /** A picture for the plane before the scene. */
  Material picture(Texture texture) {
    Material m = new Material(assets, "Common/MatDefs/Misc/Unshaded.j3md");
    m.setTexture("ColorMap", texture);
    m.getAdditionalRenderState().setBlendMode(BlendMode.Alpha);
    return m;
  }

  static ColorRGBA colour(int rgb, float alpha) {
    return new ColorRGBA(
        (rgb >> 16 & 255) / 255f, (rgb >> 8 & 255) / 255f, (rgb & 255) / 255f, alpha);
  }

  /**
   * @param rgb 256 colours, 0xRRGGBB
   */
  static Texture palette(int[] rgb) {
    ByteBuffer bytes = BufferUtils.createByteBuffer(3 * rgb.length);
    for (int c : rgb) {
      bytes.put((byte) (c >> 16)).put((byte) (c >> 8)).put((byte) c);
    }
    bytes.flip();
    Texture2D t = new Texture2D(new Image(Format.RGB8, rgb.length, 1, bytes, ColorSpace.Linear));
    t.setMinFilter(Texture.MinFilter.BilinearNoMipMaps);
    t.setWrap(Texture.WrapMode.EdgeClamp);
    return t;
  }

  private static Texture volume(VolumeTexels v) {
    ByteBuffer bytes = BufferUtils.createByteBuffer(2 * v.values().length);
    for (float f : v.values()) {
      bytes.putShort(FastMath.convertFloatToHalf(f));
    }
    bytes.flip();
    Image image =
        new Image(
            Format.RGBA16F,
            v.nx(),
            v.ny(),
            v.nz(),
            new ArrayList<>(List.of(bytes)),
            ColorSpace.Linear);
    Texture3D t = new Texture3D(image);
    t.setMinFilter(Texture.MinFilter.BilinearNoMipMaps);
    t.setMagFilter(Texture.MagFilter.Bilinear);
    t.setWrap(Texture.WrapMode.EdgeClamp);
    return t;
  }
}
