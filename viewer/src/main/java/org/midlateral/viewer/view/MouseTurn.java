package org.midlateral.viewer.view;

import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import javax.swing.SwingUtilities;
import org.midlateral.viewer.stage.Orbit;

/** Turns, moves and enlarges a view by the mouse. */
final class MouseTurn extends MouseAdapter {
  private static final double TURN = Math.toRadians(0.45);
  private static final double WHEEL = 1.12;

  private final StageView view;
  private Point last;

  MouseTurn(StageView view) {
    this.view = view;
  }

  @Override
  public void mousePressed(MouseEvent e) {
    view.requestFocusInWindow();
    last = e.getPoint();
  }

  @Override
  public void mouseDragged(MouseEvent e) {
    int dx = e.getX() - last.x;
    int dy = e.getY() - last.y;
    last = e.getPoint();
    Orbit orbit = view.orbit();
    if (SwingUtilities.isLeftMouseButton(e) && !e.isShiftDown()) {
      view.look(orbit.turned(-TURN * dx, TURN * dy));
    } else {
      double pixel = orbit.pixel(view.getWidth(), view.pictureHeight());
      view.look(orbit.panned(-dx * pixel, dy * pixel));
    }
  }

  @Override
  public void mouseWheelMoved(MouseWheelEvent e) {
    view.look(view.orbit().zoomed(Math.pow(WHEEL, e.getPreciseWheelRotation())));
  }
}
