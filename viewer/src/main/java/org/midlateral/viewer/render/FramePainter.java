package org.midlateral.viewer.render;

import com.jme3.asset.AssetManager;
import com.jme3.math.ColorRGBA;
import com.jme3.math.Vector3f;
import com.jme3.renderer.Camera;
import com.jme3.renderer.RenderManager;
import com.jme3.renderer.Renderer;
import com.jme3.renderer.ViewPort;
import com.jme3.renderer.queue.RenderQueue.Bucket;
import com.jme3.scene.Node;
import com.jme3.scene.Spatial;
import java.awt.Color;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Draws one picture after another; lives on the drawing thread. */
final class FramePainter {
  private static final float REACH = 4000;

  private final RenderManager manager;
  private final Renderer renderer;
  private final Camera camera = new Camera(64, 64);
  private final Node root = new Node("root");
  private final ViewPort port;
  private final GeometryBuilder geometries;
  private OffscreenCanvas canvas;

  FramePainter(AssetManager assets, RenderManager manager, Renderer renderer) {
    this.manager = manager;
    this.renderer = renderer;
    this.geometries = new GeometryBuilder(assets);
    camera.setParallelProjection(true);
    for (ViewPort other : manager.getMainViews()) {
      other.setEnabled(false);
    }
    port = manager.createMainView("scene", camera);
    port.setClearFlags(true, true, true);
    port.attachScene(root);
    root.setCullHint(Spatial.CullHint.Never);
    port.getQueue().setGeometryComparator(Bucket.Transparent, new DrawOrder());
  }

  RenderedFrame paint(PictureRequest picture) {
    long start = System.nanoTime();
    boolean fresh = canvas == null || !canvas.fits(picture);
    if (fresh) {
      if (canvas != null) {
        canvas.dispose();
      }
      canvas = new OffscreenCanvas(picture.width(), picture.height());
    }
    aim(picture);
    root.detachAllChildren();
    geometries.build(picture.items()).forEach(root::attachChild);
    root.updateLogicalState(0);
    root.updateGeometricState();
    port.setBackgroundColor(rgba(picture.background()));
    if (fresh && picture.smooth()) {
      // What is smoothed is copied into the rough target, which must have been drawn to before.
      port.setOutputFrameBuffer(canvas.target(false));
      manager.render(0, true);
    }
    port.setOutputFrameBuffer(canvas.target(picture.smooth()));
    manager.render(0, true);
    var image = canvas.read(renderer, picture.smooth());
    return new RenderedFrame(picture, image, (System.nanoTime() - start) / 1e6);
  }

  private void aim(PictureRequest picture) {
    Orbit orbit = picture.orbit();
    int width = picture.width();
    int height = picture.height();
    camera.resize(width, height, false);
    float halfWidth = (float) (orbit.pixel(width, height) * width / 2);
    float halfHeight = (float) (orbit.pixel(width, height) * height / 2);
    camera.setFrustum(1, REACH, -halfWidth, halfWidth, halfHeight, -halfHeight);
    camera.setLocation(vector(orbit.target().add(REACH / 2, orbit.toEye())));
    camera.setAxes(
        vector(orbit.right().negate()), vector(orbit.up()), vector(orbit.toEye().negate()));
  }

  private static Vector3f vector(Vector3D v) {
    return new Vector3f((float) v.getX(), (float) v.getY(), (float) v.getZ());
  }

  private static ColorRGBA rgba(Color colour) {
    return new ColorRGBA(
        colour.getRed() / 255f, colour.getGreen() / 255f, colour.getBlue() / 255f, 1);
  }
}
