package org.midlateral.viewer.render;

import com.jme3.app.LegacyApplication;
import com.jme3.system.AppSettings;
import com.jme3.system.JmeContext;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.lwjgl.glfw.GLFW;
import org.midlateral.viewer.background.Newest;

/** Draws pictures on a thread of its own, the newest first and no other. */
public final class OffscreenRenderer implements AutoCloseable {
  private static final Logger RENDERER_LOG = Logger.getLogger("com.jme3");
  private static final long START_SECONDS = 30;
  private static final long STOP_MILLIS = 5000;
  private static final long IDLE_MILLIS = 200;

  private final Newest<Request> waiting = new Newest<>();
  private final CompletableFuture<Void> started = new CompletableFuture<>();
  private final Loop loop = new Loop();
  private volatile Thread thread;

  private record Request(PictureRequest picture, Consumer<RenderedFrame> listener) {}

  private OffscreenRenderer() {}

  /**
   * Starts the drawing thread.
   *
   * @throws RendererFailure where there is no OpenGL to draw with
   */
  public static OffscreenRenderer open() throws RendererFailure {
    RENDERER_LOG.setLevel(Level.OFF);
    preferX11();
    OffscreenRenderer opened = new OffscreenRenderer();
    opened.loop.setSettings(settings());
    // Not waiting: a start that fails would never come back.
    opened.loop.start(JmeContext.Type.OffscreenSurface, false);
    try {
      opened.started.get(START_SECONDS, TimeUnit.SECONDS);
      return opened;
    } catch (ExecutionException e) {
      throw new RendererFailure("OpenGL 3.2 cannot be started on this display", e.getCause());
    } catch (TimeoutException e) {
      throw new RendererFailure("OpenGL did not start within " + START_SECONDS + " s", e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new RendererFailure("starting OpenGL was interrupted", e);
    }
  }

  /**
   * Swing's windows are X11's wherever there are two to choose from; looking for the other one
   * first would be told on standard error where it is not there.
   */
  private static void preferX11() throws RendererFailure {
    try {
      if (GLFW.glfwPlatformSupported(GLFW.GLFW_PLATFORM_X11)) {
        GLFW.glfwInitHint(GLFW.GLFW_PLATFORM, GLFW.GLFW_PLATFORM_X11);
      }
    } catch (LinkageError e) {
      throw new RendererFailure("OpenGL 3.2 cannot be started on this display", e);
    }
  }

  private static AppSettings settings() {
    AppSettings settings = new AppSettings(true);
    settings.setRenderer(AppSettings.LWJGL_OPENGL32);
    settings.setAudioRenderer(null);
    settings.setUseInput(false);
    settings.setGammaCorrection(false);
    settings.setVSync(false);
    settings.setWidth(64);
    settings.setHeight(64);
    return settings;
  }

  /**
   * Asks for a picture; one that still waits is dropped for it.
   *
   * @param listener gets the frame, on the drawing thread
   */
  public void draw(PictureRequest picture, Consumer<RenderedFrame> listener) {
    waiting.put(new Request(picture, listener));
  }

  @Override
  public void close() {
    loop.stop(false);
    Thread drawing = thread;
    if (drawing != null && drawing != Thread.currentThread()) {
      try {
        drawing.join(STOP_MILLIS);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
  }

  /** The renderer's own loop, which sleeps while nothing is asked for. */
  private final class Loop extends LegacyApplication {
    private FramePainter painter;

    @Override
    public void initialize() {
      super.initialize();
      thread = Thread.currentThread();
      painter = new FramePainter(assetManager, renderManager, renderer);
      started.complete(null);
    }

    @Override
    public void update() {
      super.update();
      try {
        Request request = waiting.take(IDLE_MILLIS);
        if (request != null) {
          request.listener().accept(painter.paint(request.picture()));
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        stop();
      }
    }

    @Override
    public void handleError(String message, Throwable cause) {
      if (!started.completeExceptionally(cause == null ? new Error(message) : cause)) {
        RENDERER_LOG.log(Level.SEVERE, message, cause);
        stop();
      }
    }
  }
}
