package org.midlateral.viewer.scene;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.midlateral.mechanics.Concerns;
import org.midlateral.viewer.colour.Scale;

/** What the pieces can be coloured by. */
public enum Quantity {
  NONE("Plain", "", "", false, false),
  CLEARANCE("Clearance to the skin", "mm", "clearance", false, false),
  WALL("Wall thickness", "mm", "wall", true, false),
  RIGIDITY("Rigidity EI, piece alone", "N·mm²", "EI", false, false),
  PRESSURE("Pressure on the skin", "kPa", "pressure", true, false),
  STRAIN_TROUGH("Strain, trough alone", "%", "strain", true, true),
  STRAIN_PAIR("Strain, both bonded", "%", "strain", true, true);

  private static final double KPA_PER_MPA = 1000;

  private final String title;
  private final String unit;
  private final String word;
  private final boolean slow;
  private final boolean signed;

  Quantity(String title, String unit, String word, boolean slow, boolean signed) {
    this.title = title;
    this.unit = unit;
    this.word = word;
    this.slow = slow;
    this.signed = signed;
  }

  /** A value that findings hold it against, to be marked; empty for none. */
  public Optional<Double> reference() {
    return this == PRESSURE
        ? Optional.of(KPA_PER_MPA * Concerns.PRESSURE_OF_A_NIGHT)
        : Optional.empty();
  }

  /**
   * The scale of what is shown: it fits the values, so that what differs is seen to differ. Where
   * there is a reference, it reaches from zero past that, so that a colour does not mean less the
   * less there is to see.
   */
  public Scale scale(List<double[]> values) {
    double[] all = values.stream().flatMapToDouble(DoubleStream::of).toArray();
    if (signed) {
      return Scale.aboutZero(all);
    }
    return reference()
        .map(least -> Scale.between(0, DoubleStream.of(all).reduce(least, Math::max)))
        .orElseGet(() -> Scale.over(all));
  }

  /** Whether it is the more the further it is from zero, to either side. */
  public boolean isSigned() {
    return signed;
  }

  /** Whether it takes longer than a frame. */
  public boolean isSlow() {
    return slow;
  }

  /** As a legend is headed. */
  public String title() {
    return title;
  }

  public String unit() {
    return unit;
  }

  /** What its figures are of. */
  public String meaning() {
    return switch (this) {
      case NONE -> "";
      case CLEARANCE -> "Distance from the skin to the inner side of a piece, the liner included";
      case WALL -> "Distance from the inner side of a piece to its outer side";
      case RIGIDITY -> "Elastic modulus times second moment of area of each piece's own section";
      case PRESSURE -> "What presses on the skin under a piece while it holds the joint";
      case STRAIN_TROUGH, STRAIN_PAIR ->
          "Of the surface's two principal strains the one further from zero, under the joint's"
              + " moment";
    };
  }

  /** As a reading begins. */
  public String word() {
    return word;
  }
}
