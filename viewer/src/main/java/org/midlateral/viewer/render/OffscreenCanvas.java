package org.midlateral.viewer.render;

import com.jme3.renderer.Renderer;
import com.jme3.texture.FrameBuffer;
import com.jme3.texture.FrameBuffer.FrameBufferTarget;
import com.jme3.texture.Image.Format;
import com.jme3.util.BufferUtils;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.IntBuffer;

/** The memory one size of picture is drawn into, plain and with smoothed edges. */
final class OffscreenCanvas {
  private static final int SAMPLES = 4;

  private final int width;
  private final int height;
  private final FrameBuffer plain;
  private final FrameBuffer smooth;
  private final ByteBuffer pixels;

  OffscreenCanvas(int width, int height) {
    this.width = width;
    this.height = height;
    plain = buffer(1);
    smooth = buffer(SAMPLES);
    pixels = BufferUtils.createByteBuffer(4 * width * height);
  }

  private FrameBuffer buffer(int samples) {
    FrameBuffer buffer = new FrameBuffer(width, height, samples);
    buffer.addColorTarget(FrameBufferTarget.newTarget(Format.RGBA8));
    buffer.setDepthTarget(FrameBufferTarget.newTarget(Format.Depth24));
    return buffer;
  }

  boolean fits(PictureRequest picture) {
    return picture.width() == width && picture.height() == height;
  }

  FrameBuffer target(boolean smoothed) {
    return smoothed ? smooth : plain;
  }

  /** What was drawn, top row first. */
  BufferedImage read(Renderer renderer, boolean smoothed) {
    if (smoothed) {
      renderer.copyFrameBuffer(smooth, plain, true, false);
    }
    pixels.clear();
    renderer.readFrameBufferWithFormat(plain, pixels, Format.BGRA8);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    int[] rows = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    IntBuffer from = pixels.order(ByteOrder.LITTLE_ENDIAN).asIntBuffer();
    for (int y = 0; y < height; y++) {
      from.position((height - 1 - y) * width);
      from.get(rows, y * width, width);
    }
    return image;
  }

  void dispose() {
    plain.dispose();
    smooth.dispose();
    BufferUtils.destroyDirectBuffer(pixels);
  }
}
