package org.midlateral.piece;

/**
 * Distance from the skin to the inside of a piece, along the skin's normal, over girth and station.
 */
public interface GapField {
  /**
   * Gap and its two derivatives.
   *
   * @param girth from the volar midline (mm)
   * @param station from the web (mm)
   * @param jet receives the gap (mm), its derivative by girth and by station (1)
   */
  void jet(double girth, double station, double[] jet);

  /** Whether the gap has one value all round at this station and nearby. */
  boolean uniformAt(double station);

  /** The gap (mm). */
  default double at(double girth, double station) {
    double[] jet = new double[3];
    jet(girth, station, jet);
    return jet[0];
  }

  /** The sum of two fields. */
  default GapField plus(GapField other) {
    GapField self = this;
    return new GapField() {
      @Override
      public void jet(double girth, double station, double[] jet) {
        self.jet(girth, station, jet);
        double gap = jet[0];
        double byGirth = jet[1];
        double byStation = jet[2];
        other.jet(girth, station, jet);
        jet[0] += gap;
        jet[1] += byGirth;
        jet[2] += byStation;
      }

      @Override
      public double at(double girth, double station) {
        return self.at(girth, station) + other.at(girth, station);
      }

      @Override
      public boolean uniformAt(double station) {
        return self.uniformAt(station) && other.uniformAt(station);
      }
    };
  }

  /** The field with the two sides of the finger exchanged. */
  default GapField mirrored() {
    GapField self = this;
    return new GapField() {
      @Override
      public void jet(double girth, double station, double[] jet) {
        self.jet(-girth, station, jet);
        jet[1] = -jet[1];
      }

      @Override
      public double at(double girth, double station) {
        return self.at(-girth, station);
      }

      @Override
      public boolean uniformAt(double station) {
        return self.uniformAt(station);
      }
    };
  }

  /** The same gap everywhere (mm). */
  static GapField uniform(double gap) {
    return new GapField() {
      @Override
      public void jet(double girth, double station, double[] jet) {
        jet[0] = gap;
        jet[1] = 0;
        jet[2] = 0;
      }

      @Override
      public boolean uniformAt(double station) {
        return true;
      }
    };
  }
}
