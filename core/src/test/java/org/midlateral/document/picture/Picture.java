package org.midlateral.document.picture;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.document.Content;
import org.midlateral.mesh.TriangleMesh;

/**
 * A shaded picture of meshes, drawn without a screen: parallel projection, soft light, darkened
 * outlines, smooth edges by drawing {@value #FINER} times finer. Written as PNG.
 *
 * @param figures what is seen; of those that let light through, the later ones lie over the earlier
 * @param view where from
 * @param width in pixels
 * @param height in pixels
 */
public record Picture(List<MeshFigure> figures, Viewpoint view, int width, int height)
    implements Content {
  private static final int FINER = 3;

  /** Share of the picture's width and height that stays empty on each side. */
  private static final double MARGIN = 0.06;

  private static final Color TOP = new Color(0xFAFAF8);
  private static final Color BOTTOM = new Color(0xE9EAEC);
  private static final double OUTLINE = 0.4;

  public Picture {
    figures = List.copyOf(figures);
    if (figures.isEmpty() || figures.size() > Byte.MAX_VALUE || width < 1 || height < 1) {
      throw new IllegalArgumentException("a picture needs figures, 127 at most, and a size");
    }
  }

  @Override
  public void writeTo(OutputStream out) throws IOException {
    if (!ImageIO.write(image(), "png", out)) {
      throw new IOException("no writer for PNG pictures is installed");
    }
  }

  /** The picture itself. */
  public BufferedImage image() {
    double[] frame = frame();
    List<DepthBuffer> layers = new ArrayList<>();
    DepthBuffer solid = new DepthBuffer(width * FINER, height * FINER);
    layers.add(solid);
    for (int i = 0; i < figures.size(); i++) {
      boolean clear = figures.get(i).colour().getAlpha() < 255;
      DepthBuffer layer = clear ? new DepthBuffer(solid.width, solid.height) : solid;
      TriangleMesh mesh = figures.get(i).mesh();
      layer.draw(mesh, pixels(mesh, frame), i);
      if (clear) {
        layers.add(layer);
      }
    }
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    int[] colours = new int[width * height];
    IntStream.range(0, height).parallel().forEach(y -> row(layers, y, colours));
    image.setRGB(0, 0, width, height, colours, 0, width);
    return image;
  }

  /** Scale (pixels per mm) and the place in the view's axes that comes to the middle. */
  private double[] frame() {
    double[] low = {Double.MAX_VALUE, Double.MAX_VALUE};
    double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE};
    for (MeshFigure figure : figures) {
      for (int v = 0; v < figure.mesh().vertexCount(); v++) {
        Vector3D place = figure.mesh().vertex(v);
        double x = place.dot(view.right());
        double y = place.dot(view.up());
        low[0] = Math.min(low[0], x);
        high[0] = Math.max(high[0], x);
        low[1] = Math.min(low[1], y);
        high[1] = Math.max(high[1], y);
      }
    }
    double room = FINER * (1 - 2 * MARGIN);
    double scale =
        Math.min(
            room * width / Math.max(1e-9, high[0] - low[0]),
            room * height / Math.max(1e-9, high[1] - low[1]));
    return new double[] {scale, (low[0] + high[0]) / 2, (low[1] + high[1]) / 2};
  }

  private double[] pixels(TriangleMesh mesh, double[] frame) {
    double[] out = new double[3 * mesh.vertexCount()];
    for (int v = 0; v < mesh.vertexCount(); v++) {
      Vector3D place = mesh.vertex(v);
      out[3 * v] = width * FINER / 2.0 + frame[0] * (place.dot(view.right()) - frame[1]);
      out[3 * v + 1] = height * FINER / 2.0 - frame[0] * (place.dot(view.up()) - frame[2]);
      out[3 * v + 2] = frame[0] * place.dot(view.toward());
    }
    return out;
  }

  /**
   * One row of the picture: the mean, in linear light, of the finer pixels under each of its own.
   */
  private void row(List<DepthBuffer> layers, int y, int[] colours) {
    double[] light = new double[3];
    double[] sum = new double[3];
    for (int x = 0; x < width; x++) {
      Arrays.fill(sum, 0);
      for (int i = 0; i < FINER * FINER; i++) {
        int fineX = x * FINER + i % FINER;
        int fineY = y * FINER + i / FINER;
        background((double) y / height, light);
        DepthBuffer solid = layers.get(0);
        float behind = solid.depth[fineY * solid.width + fineX];
        for (DepthBuffer layer : layers) {
          if (layer == solid || layer.depth[fineY * solid.width + fineX] > behind) {
            lay(layer, fineX, fineY, light);
          }
        }
        for (int k = 0; k < 3; k++) {
          sum[k] += light[k] / (FINER * FINER);
        }
      }
      colours[y * width + x] =
          Lighting.encoded(sum[0]) << 16 | Lighting.encoded(sum[1]) << 8 | Lighting.encoded(sum[2]);
    }
  }

  private static void background(double down, double[] light) {
    light[0] = mix(TOP.getRed(), BOTTOM.getRed(), down);
    light[1] = mix(TOP.getGreen(), BOTTOM.getGreen(), down);
    light[2] = mix(TOP.getBlue(), BOTTOM.getBlue(), down);
  }

  private static double mix(int from, int to, double share) {
    return (1 - share) * Lighting.linear(from) + share * Lighting.linear(to);
  }

  /** Lays what a layer shows at a finer pixel over the light gathered so far. */
  private void lay(DepthBuffer layer, int x, int y, double[] light) {
    int pixel = y * layer.width + x;
    if (layer.owner[pixel] < 0) {
      return;
    }
    Color colour = figures.get(layer.owner[pixel]).colour();
    float nx = layer.normals[3 * pixel];
    float ny = layer.normals[3 * pixel + 1];
    float nz = layer.normals[3 * pixel + 2];
    double dark = outlined(layer, x, y) ? OUTLINE : 1;
    double share = dark * Lighting.diffuse(nx, ny, nz);
    double gloss = dark * Lighting.gloss(nx, ny, nz);
    double alpha = colour.getAlpha() / 255.0;
    int[] own = {colour.getRed(), colour.getGreen(), colour.getBlue()};
    for (int k = 0; k < 3; k++) {
      light[k] += alpha * (share * Lighting.linear(own[k]) + gloss - light[k]);
    }
  }

  /** Whether the surface ends, or drops well behind itself, beside this finer pixel. */
  private static boolean outlined(DepthBuffer layer, int x, int y) {
    return drops(layer, x, y, 1, 0)
        || drops(layer, x, y, -1, 0)
        || drops(layer, x, y, 0, 1)
        || drops(layer, x, y, 0, -1);
  }

  private static boolean drops(DepthBuffer layer, int x, int y, int dx, int dy) {
    int nextX = x + dx;
    int nextY = y + dy;
    if (nextX < 0 || nextY < 0 || nextX >= layer.width || nextY >= layer.height) {
      return false;
    }
    int here = y * layer.width + x;
    int there = nextY * layer.width + nextX;
    // A slanted surface drops by its slope from pixel to pixel; an edge drops by far more.
    float slope = 4 / Math.max(0.05f, layer.normals[3 * here + 2]);
    return layer.depth[here] - layer.depth[there] > 4 + slope;
  }
}
