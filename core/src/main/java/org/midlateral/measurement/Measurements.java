package org.midlateral.measurement;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What was measured on one finger. All lengths in mm, all angles in radians.
 *
 * @param reference a code of the user's own; never a person's name
 * @param hand which hand
 * @param digit which finger
 * @param unit the unit the file was written in, used again on the documents
 * @param circumference tape circumference by level (mm); always has PROXIMAL_PHALANX, PIP,
 *     MIDDLE_PHALANX and TIP, may have DIP
 * @param width calliper width by level (mm); may be empty
 * @param palmarCreaseToWeb distal palmar crease to the web level (mm)
 * @param webToPip web level to the PIP crease (mm)
 * @param pipToDip PIP crease to the DIP crease (mm)
 * @param dipToTip DIP crease to the end of the pulp (mm)
 * @param pipExtensionDeficit flexion left at the PIP joint (rad); 0 is full extension
 * @param dipFlexion flexion at the DIP joint (rad)
 * @param pipAxisDistalOfCrease distance from the PIP crease to the joint's axis (mm)
 * @param dipAxisDistalOfCrease distance from the DIP crease to the joint's axis (mm)
 * @param station levels whose station was stated (mm from the web) instead of the usual one
 * @param room for swelling, and beside the finger
 */
public record Measurements(
    String reference,
    Hand hand,
    Digit digit,
    LengthUnit unit,
    Map<Level, Double> circumference,
    Map<Level, Double> width,
    double palmarCreaseToWeb,
    double webToPip,
    double pipToDip,
    double dipToTip,
    double pipExtensionDeficit,
    double dipFlexion,
    double pipAxisDistalOfCrease,
    double dipAxisDistalOfCrease,
    Map<Level, Double> station,
    Room room) {

  public Measurements {
    circumference = copy(circumference);
    width = copy(width);
    station = copy(station);
  }

  private static Map<Level, Double> copy(Map<Level, Double> map) {
    Map<Level, Double> copy = new EnumMap<>(Level.class);
    copy.putAll(map);
    return Collections.unmodifiableMap(copy);
  }

  /** The same finger with other room. */
  public Measurements withRoom(Room other) {
    return new Measurements(
        reference,
        hand,
        digit,
        unit,
        circumference,
        width,
        palmarCreaseToWeb,
        webToPip,
        pipToDip,
        dipToTip,
        pipExtensionDeficit,
        dipFlexion,
        pipAxisDistalOfCrease,
        dipAxisDistalOfCrease,
        station,
        other);
  }

  /**
   * The finger that the pieces are made for: each girth larger by what is allowed for swelling, and
   * each width in proportion, so that the sections keep their shape. It is the same finger where
   * nothing is allowed for.
   */
  public Measurements swollen() {
    if (room.swelling() == 0) {
      return this;
    }
    Map<Level, Double> girths = new EnumMap<>(Level.class);
    circumference.forEach((level, tape) -> girths.put(level, tape + room.swelling()));
    Map<Level, Double> widths = new EnumMap<>(Level.class);
    width.forEach((level, across) -> widths.put(level, across * growth(level)));
    return withCircumference(girths)
        .withWidth(widths)
        .withRoom(new Room(0, room.radial(), room.ulnar()));
  }

  /** By what a level's width grows; at the web, where no tape is laid, by the next level's. */
  private double growth(Level level) {
    Double tape = circumference.getOrDefault(level, circumference.get(Level.PROXIMAL_PHALANX));
    return (tape + room.swelling()) / tape;
  }

  /** The same finger with other tapes (mm). */
  public Measurements withCircumference(Map<Level, Double> other) {
    return new Measurements(
        reference,
        hand,
        digit,
        unit,
        other,
        width,
        palmarCreaseToWeb,
        webToPip,
        pipToDip,
        dipToTip,
        pipExtensionDeficit,
        dipFlexion,
        pipAxisDistalOfCrease,
        dipAxisDistalOfCrease,
        station,
        room);
  }

  /** The same finger with other widths (mm). */
  public Measurements withWidth(Map<Level, Double> other) {
    return new Measurements(
        reference,
        hand,
        digit,
        unit,
        circumference,
        other,
        palmarCreaseToWeb,
        webToPip,
        pipToDip,
        dipToTip,
        pipExtensionDeficit,
        dipFlexion,
        pipAxisDistalOfCrease,
        dipAxisDistalOfCrease,
        station,
        room);
  }

  /**
   * The same finger with other lengths (mm).
   *
   * @param palmarCreaseToWeb distal palmar crease to the web level
   * @param webToPip web level to the PIP crease
   * @param pipToDip PIP crease to the DIP crease
   * @param dipToTip DIP crease to the end of the pulp
   */
  public Measurements withLengths(
      double palmarCreaseToWeb, double webToPip, double pipToDip, double dipToTip) {
    return new Measurements(
        reference,
        hand,
        digit,
        unit,
        circumference,
        width,
        palmarCreaseToWeb,
        webToPip,
        pipToDip,
        dipToTip,
        pipExtensionDeficit,
        dipFlexion,
        pipAxisDistalOfCrease,
        dipAxisDistalOfCrease,
        station,
        room);
  }

  /** The same finger under another reference. */
  public Measurements withReference(String other) {
    return new Measurements(
        other,
        hand,
        digit,
        unit,
        circumference,
        width,
        palmarCreaseToWeb,
        webToPip,
        pipToDip,
        dipToTip,
        pipExtensionDeficit,
        dipFlexion,
        pipAxisDistalOfCrease,
        dipAxisDistalOfCrease,
        station,
        room);
  }

  /** The same finger with its PIP joint short of extension by another angle (rad). */
  public Measurements withPipExtensionDeficit(double other) {
    return new Measurements(
        reference,
        hand,
        digit,
        unit,
        circumference,
        width,
        palmarCreaseToWeb,
        webToPip,
        pipToDip,
        dipToTip,
        other,
        dipFlexion,
        pipAxisDistalOfCrease,
        dipAxisDistalOfCrease,
        station,
        room);
  }

  /** Station of the PIP joint's axis (mm): distal of its crease. */
  public double pipAxis() {
    return webToPip + pipAxisDistalOfCrease;
  }

  /** Station of the DIP joint's axis (mm): distal of its crease. */
  public double dipAxis() {
    return webToPip + pipToDip + dipAxisDistalOfCrease;
  }

  /** Station of the end of the pulp (mm). */
  public double pulpEnd() {
    return webToPip + pipToDip + dipToTip;
  }

  /**
   * Station at which a level is measured (mm): the one stated, else the usual one: midway between
   * creases for the phalanges, midway from the DIP crease to the end of the pulp for the tip, the
   * joint's axis for PIP and DIP.
   */
  public double stationOf(Level level) {
    Double stated = station.get(level);
    if (stated != null) {
      return stated;
    }
    return switch (level) {
      case WEB -> 0;
      case PROXIMAL_PHALANX -> webToPip / 2;
      case PIP -> pipAxis();
      case MIDDLE_PHALANX -> webToPip + pipToDip / 2;
      case DIP -> dipAxis();
      case TIP -> webToPip + pipToDip + dipToTip / 2;
    };
  }
}
