package org.midlateral.viewer.view;

import java.awt.Point;
import java.util.Optional;
import java.util.function.Function;
import org.midlateral.digit.DigitSurface;
import org.midlateral.viewer.view.Rise.SkinPlace;

/**
 * One of the pair of rises that is dragged round the finger, with the other as its mirror image: as
 * far as the one is from its mid-lateral line, so far is the other.
 */
final class PairDrag implements DragHandle {
  private final DigitSurface digit;
  private final double side;
  private final double off;
  private final Function<Point, Optional<SkinPlace>> skin;
  private final RiseListener listener;

  /**
   * Holds the pair.
   *
   * @param rise the one of it that is held
   * @param at where on the skin it is held
   * @param skin the place on the finger under a point of the picture
   */
  PairDrag(
      Rise rise, SkinPlace at, Function<Point, Optional<SkinPlace>> skin, RiseListener listener) {
    digit = rise.shape().digit();
    side = Math.signum(rise.shape().girth());
    off = rise.shape().girth() - at.girth();
    this.skin = skin;
    this.listener = listener;
  }

  @Override
  public void dragTo(Point to) {
    skin.apply(to)
        .ifPresent(
            place -> {
              double quarter = digit.circumference(digit.pipAxis()) / 4;
              listener.pairMoved(quarter - side * (place.girth() + off));
            });
  }

  @Override
  public void drop() {
    listener.dropped(RiseListener.PAIR);
  }
}
