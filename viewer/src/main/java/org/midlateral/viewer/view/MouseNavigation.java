package org.midlateral.viewer.view;

import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import java.util.function.UnaryOperator;
import javax.swing.SwingUtilities;
import org.midlateral.viewer.render.Orbit;

/** Turns, moves and enlarges a picture by the mouse. */
final class MouseNavigation extends MouseAdapter {
  private static final double TURN = Math.toRadians(0.45);
  private static final double WHEEL = 1.12;

  private final IntSupplier pictureHeight;
  private final Consumer<UnaryOperator<Orbit>> look;
  private Point last;

  /**
   * Navigates.
   *
   * @param pictureHeight of the picture, which begins at the component's upper edge (px)
   * @param look gets each change of where it is looked from
   */
  MouseNavigation(IntSupplier pictureHeight, Consumer<UnaryOperator<Orbit>> look) {
    this.pictureHeight = pictureHeight;
    this.look = look;
  }

  @Override
  public void mousePressed(MouseEvent e) {
    e.getComponent().requestFocusInWindow();
    last = e.getPoint();
  }

  @Override
  public void mouseDragged(MouseEvent e) {
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
    look.accept(orbit -> orbit.zoomed(Math.pow(WHEEL, e.getPreciseWheelRotation())));
  }
}
