package org.midlateral.viewer.view;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.ActionEvent;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.HierarchyEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javax.swing.AbstractAction;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import org.midlateral.viewer.render.OffscreenRenderer;
import org.midlateral.viewer.render.Orbit;
import org.midlateral.viewer.render.PictureRequest;
import org.midlateral.viewer.render.RenderedFrame;
import org.midlateral.viewer.render.SceneItem;

/** A component that shows a scene, turned by mouse and keys. */
public abstract class SceneView extends JPanel {
  private static final long serialVersionUID = 1;
  private static final double KEY_TURN = Math.toRadians(7.5);
  private static final double KEY_ZOOM = 1.15;
  private static final double KEY_PAN = 0.06;
  private static final int SETTLED_MILLIS = 180;

  private final transient OffscreenRenderer renderer;
  private final Timer settled;
  private transient Orbit orbit;
  private transient RenderedFrame frame;
  private transient PictureRequest asked;

  /** The frame with what is drawn over it. */
  private transient BufferedImage written;

  private transient Runnable whenShown = () -> {};
  private boolean changedSinceShown;

  /** Number of the scene; a frame of a former one is not shown. */
  private int scene;

  protected SceneView(OffscreenRenderer renderer, Orbit first) {
    this.renderer = renderer;
    this.orbit = first;
    settled = new Timer(SETTLED_MILLIS, e -> ask(true));
    settled.setRepeats(false);
    setFocusable(true);
    setPreferredSize(new Dimension(560, 480));
    MouseNavigation mouse =
        new MouseNavigation(this::pictureHeight, this::navigate, this::handle, this::wheeled);
    addMouseListener(mouse);
    addMouseMotionListener(mouse);
    addMouseWheelListener(mouse);
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            resized();
          }
        });
    addHierarchyListener(
        e -> {
          if ((e.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0 && isShowing()) {
            refresh();
          }
        });
    keys();
  }

  /** What is in the scene. */
  protected abstract List<SceneItem> items();

  /** What is behind it. */
  protected abstract Color paper();

  /** Draws over the picture, in the component's own coordinates. */
  protected abstract void over(Graphics2D g, RenderedFrame shown, int width, int height);

  /** Says why there is no picture. */
  protected void instead(Graphics2D g) {}

  /** Height of what is drawn below the picture (px). */
  protected int footer() {
    return 0;
  }

  /** Draws below the picture, from y = 0 down. */
  protected void drawFooter(Graphics2D g, int width) {}

  /** What is dragged from a point in place of the picture; empty where the picture is turned. */
  Optional<DragHandle> handle(MouseEvent press) {
    return Optional.empty();
  }

  /** Whether the wheel was for something under the pointer; else it enlarges the picture. */
  boolean wheeled(MouseWheelEvent e) {
    return false;
  }

  /** Width at the left that is kept free when all is brought into view (px). */
  protected int margin() {
    return 0;
  }

  /** Height of the picture itself (px). */
  protected final int pictureHeight() {
    return Math.max(1, getHeight() - footer());
  }

  /** Called when the component has got another size. */
  protected void resized() {
    refresh();
  }

  public final Orbit orbit() {
    return orbit;
  }

  /** Looks from elsewhere. */
  public final void look(Orbit other) {
    orbit = other;
    refresh();
  }

  private void navigate(UnaryOperator<Orbit> change) {
    look(change.apply(orbit));
  }

  /** Looks from the same side so that all is in view. */
  public final void fit() {
    if (getWidth() > 0 && getHeight() > 0) {
      int height = pictureHeight();
      Orbit fitted = FitToWindow.of(items(), orbit, getWidth() - margin(), height);
      double pixel = fitted.pixel(getWidth() - margin(), height);
      // The span is counted over the shorter side, which may be another with the margin.
      double span = pixel * Math.min(getWidth(), height) / 2;
      look(fitted.withSpan(span).panned(-pixel * margin() / 2, 0));
    }
  }

  /** Has the picture drawn anew, at once roughly and then smoothly. */
  public final void refresh() {
    changedSinceShown = true;
    ask(false);
    settled.restart();
  }

  /** Calls back once, when a picture asked for after this call is on the screen. */
  public final void whenNextShown(Runnable callback) {
    whenShown = callback;
    changedSinceShown = false;
  }

  /** Whether a picture that is asked for now comes on the screen. */
  public final boolean isDrawn() {
    return isShowing() && getWidth() > 0 && getHeight() > 0;
  }

  /** Takes the picture off the screen; one that is still being drawn does not come any more. */
  protected final void forgetPicture() {
    scene++;
    frame = null;
    asked = null;
    refresh();
    repaint();
  }

  /** Whether the picture on the screen is the one last asked for, drawn smoothly. */
  public final boolean isSettled() {
    return isShowing()
        && frame != null
        && frame.picture().equals(asked)
        && asked.smooth()
        && !settled.isRunning();
  }

  /** The frame on the screen; null before the first. */
  public final RenderedFrame frame() {
    return frame;
  }

  /** Calls back once, when the newest picture is on the screen, drawn smoothly. */
  public final void whenSettled(Runnable callback) {
    if (isSettled()) {
      callback.run();
    } else {
      Timer again = new Timer(SETTLED_MILLIS, e -> whenSettled(callback));
      again.setRepeats(false);
      again.start();
    }
  }

  private void ask(boolean smooth) {
    if (!isDrawn()) {
      return;
    }
    double scale = pixelScale();
    int width = (int) Math.round(getWidth() * scale);
    int height = (int) Math.round(pictureHeight() * scale);
    PictureRequest picture = new PictureRequest(items(), orbit, width, height, paper(), smooth);
    asked = picture;
    int drawn = scene;
    renderer.draw(picture, shown -> SwingUtilities.invokeLater(() -> take(shown, drawn)));
  }

  private double pixelScale() {
    return getGraphicsConfiguration().getDefaultTransform().getScaleX();
  }

  private void take(RenderedFrame drawn, int ofScene) {
    if (ofScene != scene) {
      return;
    }
    frame = drawn;
    paintImmediately(0, 0, getWidth(), getHeight());
    if (changedSinceShown) {
      Runnable callback = whenShown;
      whenShown = () -> {};
      callback.run();
    }
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    paintAll(g);
    if (isFocusOwner()) {
      g.setColor(javax.swing.UIManager.getColor("Component.focusColor"));
      g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
      g.drawRect(1, 1, getWidth() - 3, getHeight() - 3);
    }
    g.dispose();
  }

  private void paintAll(Graphics2D g) {
    Graphics2D picture = (Graphics2D) g.create(0, 0, getWidth(), pictureHeight());
    paintPicture(picture, getWidth(), pictureHeight());
    picture.dispose();
    if (footer() > 0) {
      Graphics2D below = (Graphics2D) g.create(0, pictureHeight(), getWidth(), footer());
      hints(below);
      drawFooter(below, getWidth());
      below.dispose();
    }
  }

  private void hints(Graphics2D g) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setFont(getFont());
  }

  private void paintPicture(Graphics2D g, int width, int height) {
    if (frame == null) {
      g.setColor(paper());
      g.fillRect(0, 0, width, height);
      hints(g);
      instead(g);
      return;
    }
    g.drawImage(
        written(width, height),
        AffineTransform.getScaleInstance(
            width / (double) frame.image().getWidth(), height / (double) frame.image().getHeight()),
        null);
  }

  /** The picture and what is over it: in memory, where lines and words are drawn fastest. */
  private BufferedImage written(int width, int height) {
    BufferedImage bare = frame.image();
    if (written == null
        || written.getWidth() != bare.getWidth()
        || written.getHeight() != bare.getHeight()) {
      written = new BufferedImage(bare.getWidth(), bare.getHeight(), BufferedImage.TYPE_INT_RGB);
      // It changes each time: a copy of it near the screen would never be used again.
      written.setAccelerationPriority(0);
    }
    Graphics2D g = written.createGraphics();
    g.drawImage(bare, 0, 0, null);
    g.scale(bare.getWidth() / (double) width, bare.getHeight() / (double) height);
    hints(g);
    g.setClip(0, 0, width, height);
    over(g, frame, width, height);
    g.dispose();
    return written;
  }

  /** What is on the screen, names and all, as an image of as many pixels. */
  public final BufferedImage still() {
    double scale = pixelScale();
    BufferedImage image =
        new BufferedImage(
            (int) Math.round(getWidth() * scale),
            (int) Math.round(getHeight() * scale),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.scale(scale, scale);
    paintAll(g);
    g.dispose();
    return image;
  }

  /**
   * Draws a picture of some size for a slide, in a view that is not on the screen.
   *
   * @param done gets it, on the screen's thread
   */
  public final void slide(int width, int height, Consumer<BufferedImage> done) {
    setSize(width, height);
    resized();
    PictureRequest picture =
        new PictureRequest(items(), orbit, width, pictureHeight(), paper(), true);
    renderer.draw(picture, drawn -> SwingUtilities.invokeLater(() -> done.accept(painted(drawn))));
  }

  private BufferedImage painted(RenderedFrame drawn) {
    frame = drawn;
    BufferedImage image = new BufferedImage(getWidth(), getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    paintAll(g);
    g.dispose();
    return image;
  }

  private void keys() {
    key("LEFT", o -> o.turned(-KEY_TURN, 0));
    key("RIGHT", o -> o.turned(KEY_TURN, 0));
    key("UP", o -> o.turned(0, KEY_TURN));
    key("DOWN", o -> o.turned(0, -KEY_TURN));
    key("shift LEFT", o -> o.panned(o.span() * KEY_PAN, 0));
    key("shift RIGHT", o -> o.panned(-o.span() * KEY_PAN, 0));
    key("shift UP", o -> o.panned(0, -o.span() * KEY_PAN));
    key("shift DOWN", o -> o.panned(0, o.span() * KEY_PAN));
    for (String in : new String[] {"PLUS", "EQUALS", "ADD"}) {
      key(in, o -> o.zoomed(1 / KEY_ZOOM));
    }
    for (String out : new String[] {"MINUS", "SUBTRACT"}) {
      key(out, o -> o.zoomed(KEY_ZOOM));
    }
  }

  private void key(String stroke, UnaryOperator<Orbit> change) {
    key(stroke, () -> navigate(change));
  }

  /** Does something when a key is pressed while the picture has the keys. */
  protected final void key(String stroke, Runnable action) {
    getInputMap(WHEN_FOCUSED).put(KeyStroke.getKeyStroke(stroke), stroke);
    getActionMap()
        .put(
            stroke,
            new AbstractAction() {
              private static final long serialVersionUID = 1;

              @Override
              public void actionPerformed(ActionEvent e) {
                action.run();
              }
            });
  }
}
