package org.midlateral.viewer.view;

import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntSupplier;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import javax.swing.SwingUtilities;
import org.midlateral.viewer.render.Orbit;

/** Turns, moves and enlarges a picture by the mouse. */
final class MouseNavigation extends MouseAdapter {
  private static final double TURN = Math.toRadians(0.45);
  private static final double WHEEL = 1.12;

  private final IntSupplier pictureHeight;
  private final Consumer<UnaryOperator<Orbit>> look;
  private final Function<MouseEvent, Optional<DragHandle>> handles;
  private final Predicate<MouseWheelEvent> wheeled;
  private Point last;
  private Optional<DragHandle> held = Optional.empty();

  /**
   * Navigates.
   *
   * @param pictureHeight of the picture, which begins at the component's upper edge (px)
   * @param look gets each change of where it is looked from
   * @param handles gives what is dragged in place of the picture
   * @param wheeled whether the wheel was for something under the pointer
   */
  MouseNavigation(
      IntSupplier pictureHeight,
      Consumer<UnaryOperator<Orbit>> look,
      Function<MouseEvent, Optional<DragHandle>> handles,
      Predicate<MouseWheelEvent> wheeled) {
    this.pictureHeight = pictureHeight;
    this.look = look;
    this.handles = handles;
    this.wheeled = wheeled;
  }

  @Override
  public void mousePressed(MouseEvent e) {
    e.getComponent().requestFocusInWindow();
    last = e.getPoint();
    boolean plain = SwingUtilities.isLeftMouseButton(e) && !e.isShiftDown() && !e.isControlDown();
    held = plain ? handles.apply(e) : Optional.empty();
  }

  @Override
  public void mouseReleased(MouseEvent e) {
    held.ifPresent(DragHandle::drop);
    held = Optional.empty();
  }

  @Override
  public void mouseDragged(MouseEvent e) {
    if (held.isPresent()) {
      held.get().dragTo(e.getPoint());
      return;
    }
    int dx = e.getX() - last.x;
    int dy = e.getY() - last.y;
    last = e.getPoint();
    if (SwingUtilities.isLeftMouseButton(e) && !e.isShiftDown()) {
      look.accept(orbit -> orbit.turned(-TURN * dx, TURN * dy));
    } else {
      int width = e.getComponent().getWidth();
      look.accept(
          orbit -> {
            double pixel = orbit.pixel(width, pictureHeight.getAsInt());
            return orbit.panned(-dx * pixel, dy * pixel);
          });
    }
  }

  @Override
  public void mouseWheelMoved(MouseWheelEvent e) {
    if (!wheeled.test(e)) {
      look.accept(orbit -> orbit.zoomed(Math.pow(WHEEL, e.getPreciseWheelRotation())));
    }
  }
}
