package org.midlateral.viewer.view;

import java.awt.Point;
import java.util.Optional;
import java.util.function.Function;
import org.midlateral.digit.DigitSurface;
import org.midlateral.viewer.view.Rise.SkinPlace;

/** A rise that is dragged along the skin: what is held under the pointer stays under it. */
final class RiseDrag implements DragHandle {
  /** From its middle to the end of the finger (mm). */
  private static final double LEAST = 1;

  private final DigitSurface digit;
  private final int number;
  private final double stationOff;
  private final double girthOff;
  private final int side;
  private final Function<Point, Optional<SkinPlace>> skin;
  private final RiseListener listener;

  /**
   * Holds a rise.
   *
   * @param at where on the skin it is held
   * @param side +1 where the drawn finger's +y is radial, else -1
   * @param skin the place on the finger under a point of the picture
   */
  RiseDrag(
      Rise rise,
      SkinPlace at,
      int side,
      Function<Point, Optional<SkinPlace>> skin,
      RiseListener listener) {
    digit = rise.shape().digit();
    number = rise.number();
    stationOff = rise.shape().station() - at.station();
    girthOff = rise.shape().girth() - at.girth();
    this.side = side;
    this.skin = skin;
    this.listener = listener;
  }

  @Override
  public void dragTo(Point to) {
    skin.apply(to)
        .ifPresent(
            place -> {
              double station = Math.min(place.station() + stationOff, digit.pulpEnd() - LEAST);
              double round = digit.circumference(station);
              double girth = place.girth() + girthOff;
              // Past the dorsal midline girth is counted from the other side.
              double counted = girth - round * Math.rint(girth / round);
              listener.moved(number, station, side * counted);
            });
  }

  @Override
  public void drop() {
    listener.dropped(number);
  }
}
