package org.midlateral.recipe.course;

import org.midlateral.measurement.course.PieceWork;
import org.midlateral.measurement.course.Visit;

/** A visit at which nothing was done to the piece. */
final class Same {
  private Same() {}

  static Visit piece(Visit visit) {
    return new Visit(
        visit.time(),
        visit.deficit(),
        visit.pipFlexion(),
        visit.dipFlexion(),
        visit.circumference(),
        visit.hoursWorn(),
        visit.skin(),
        visit.tension(),
        visit.layers(),
        visit.gauge(),
        PieceWork.NONE,
        visit.note());
  }
}
