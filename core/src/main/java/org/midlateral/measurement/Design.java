package org.midlateral.measurement;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What was chosen for one orthosis; every key of the file that is not a measurement. Lengths in mm,
 * the wrap as a share of the circumference.
 */
public record Design(
    TroughDesign trough,
    ReliefDesign relief,
    DorsalShellDesign dorsalShell,
    ClosureDesign closure,
    MaterialDesign material,
    PrintDesign print,
    SupportDesign support,
    HoldingDesign holding,
    MakingDesign making) {

  /** The same design with another dorsal shell. */
  public Design withDorsalShell(DorsalShellDesign other) {
    return new Design(trough, relief, other, closure, material, print, support, holding, making);
  }

  /** The same design with another trough. */
  public Design withTrough(TroughDesign other) {
    return new Design(
        other, relief, dorsalShell, closure, material, print, support, holding, making);
  }

  /** The same design with the reference raised on its pieces. */
  public Design withLabel() {
    PrintDesign labelled =
        new PrintDesign(print.process(), print.edgeLength(), true, print.proximal());
    return new Design(
        trough, relief, dorsalShell, closure, material, labelled, support, holding, making);
  }

  /** The same design in another material. */
  public Design withMaterial(MaterialDesign other) {
    return new Design(trough, relief, dorsalShell, closure, other, print, support, holding, making);
  }

  /** The same design held against another load. */
  public Design withSupport(SupportDesign other) {
    return new Design(
        trough, relief, dorsalShell, closure, material, print, other, holding, making);
  }

  /** The same design on another joint, skin or band. */
  public Design withHolding(HoldingDesign other) {
    return new Design(
        trough, relief, dorsalShell, closure, material, print, support, other, making);
  }

  /** How the distal end of the trough is finished. */
  public enum DistalEnd {
    /** Stops short of the end of the pulp. */
    OPEN,
    /** Goes on over the end of the pulp. */
    COVERED
  }

  /** Whether something optional is made. AUTO leaves it to the finger's shape. */
  public enum Make {
    AUTO,
    YES,
    NO
  }

  /** How the pieces are made. AUTO leaves it to the material. */
  public enum Making {
    AUTO,
    HAND,
    PRINT
  }

  /** What tells the dorsal shell's proximal end. */
  public enum ProximalSign {
    /** The raised hook. */
    MARK,
    /** An arrow and a word as well. */
    WORD
  }

  /** The paper of sheets and pattern. AUTO leaves it to the unit. */
  public enum Paper {
    AUTO,
    A4,
    LETTER
  }

  /** What closes the orthosis. */
  public enum ClosureKind {
    WRAP,
    SLEEVE,
    TAPE,
    STRAP
  }

  /** The process a piece is printed by. */
  public enum ProcessDesign {
    FILAMENT,
    POWDER,
    RESIN
  }

  /**
   * Round vents.
   *
   * @param diameter of each vent (mm); 0 makes none
   * @param spacing between centres (mm)
   */
  public record VentDesign(double diameter, double spacing) {}

  /**
   * The volar piece.
   *
   * @param wrap share of the circumference covered; 0.5 is the mid-lateral line
   * @param wall thickness (mm)
   * @param clearance gap between piece and skin, or piece and liner (mm)
   * @param liner thickness of a padding liner (mm)
   * @param webClearance the flanks start this far distal of the web (mm)
   * @param proximalMargin the tongue ends this far distal of the palmar crease (mm)
   * @param distal open or covered
   * @param distalMargin an open end stops this far short of the end of the pulp (mm)
   * @param corner length of the 45 degree cut at each corner, before rounding (mm)
   * @param flare how far the proximal edge is rolled away from the skin (mm)
   * @param flareWidth over which width the flare rises (mm)
   * @param vents round vents
   */
  public record TroughDesign(
      double wrap,
      double wall,
      double clearance,
      double liner,
      double webClearance,
      double proximalMargin,
      DistalEnd distal,
      double distalMargin,
      double corner,
      double flare,
      double flareWidth,
      VentDesign vents) {
    /** The same trough up to another share of the circumference. */
    public TroughDesign withWrap(double other) {
      return new TroughDesign(
          other,
          wall,
          clearance,
          liner,
          webClearance,
          proximalMargin,
          distal,
          distalMargin,
          corner,
          flare,
          flareWidth,
          vents);
    }

    /** The same trough with another wall (mm). */
    public TroughDesign withWall(double other) {
      return new TroughDesign(
          wrap,
          other,
          clearance,
          liner,
          webClearance,
          proximalMargin,
          distal,
          distalMargin,
          corner,
          flare,
          flareWidth,
          vents);
    }

    /** The same trough with another gap to the skin (mm). */
    public TroughDesign withClearance(double other) {
      return new TroughDesign(
          wrap,
          wall,
          other,
          liner,
          webClearance,
          proximalMargin,
          distal,
          distalMargin,
          corner,
          flare,
          flareWidth,
          vents);
    }

    /** The same trough whose tongue ends elsewhere (mm). */
    public TroughDesign withProximalMargin(double other) {
      return new TroughDesign(
          wrap,
          wall,
          clearance,
          liner,
          webClearance,
          other,
          distal,
          distalMargin,
          corner,
          flare,
          flareWidth,
          vents);
    }

    /** The same trough with its distal end finished otherwise. */
    public TroughDesign withDistal(DistalEnd other) {
      return new TroughDesign(
          wrap,
          wall,
          clearance,
          liner,
          webClearance,
          proximalMargin,
          other,
          distalMargin,
          corner,
          flare,
          flareWidth,
          vents);
    }

    /** The same trough whose open end stops elsewhere (mm). */
    public TroughDesign withDistalMargin(double other) {
      return new TroughDesign(
          wrap,
          wall,
          clearance,
          liner,
          webClearance,
          proximalMargin,
          distal,
          other,
          corner,
          flare,
          flareWidth,
          vents);
    }

    /** The same trough with other corners (mm). */
    public TroughDesign withCorner(double other) {
      return new TroughDesign(
          wrap,
          wall,
          clearance,
          liner,
          webClearance,
          proximalMargin,
          distal,
          distalMargin,
          other,
          flare,
          flareWidth,
          vents);
    }
  }

  /**
   * The pair of relief bubbles over the collateral ligaments, and any further ones.
   *
   * @param make whether the pair is made; AUTO makes it when the PIP joint is bulbous or sore
   * @param sore whether the sides of the PIP joint are sore
   * @param height rise of the gap at a bubble's centre (mm)
   * @param length half-length of the footprint along the finger (mm)
   * @param width half-width of the footprint along the girth (mm)
   * @param volarOffset the centres lie this far volar of the mid-lateral lines (mm)
   * @param bubbles further bubbles
   */
  public record ReliefDesign(
      Make make,
      boolean sore,
      double height,
      double length,
      double width,
      double volarOffset,
      List<Bubble> bubbles) {
    public ReliefDesign {
      bubbles = List.copyOf(bubbles);
    }
  }

  /**
   * One further bubble.
   *
   * @param station of its centre (mm from the web)
   * @param girth of its centre along the skin from the volar midline (mm), positive to the radial
   *     side
   * @param height rise of the gap at its centre (mm)
   * @param length half-length of the footprint along the finger (mm)
   * @param width half-width of the footprint along the girth (mm)
   */
  public record Bubble(double station, double girth, double height, double length, double width) {}

  /**
   * The dorsal piece. Empty values follow the trough.
   *
   * @param make whether it is made
   * @param length along the finger (mm); empty is half of the trough's
   * @param overlap reach past the trough's finished edge, along the girth (mm)
   * @param fitGap between the trough's outside and the shell's inside (mm)
   * @param clearance to the skin (mm)
   * @param wall thickness (mm); empty is the trough's
   * @param vents round vents
   */
  public record DorsalShellDesign(
      boolean make,
      OptionalDouble length,
      double overlap,
      double fitGap,
      double clearance,
      OptionalDouble wall,
      VentDesign vents) {
    /** The same shell, made or not. */
    public DorsalShellDesign withMake(boolean other) {
      return new DorsalShellDesign(other, length, overlap, fitGap, clearance, wall, vents);
    }

    /** The same shell with another reach past the trough's edge (mm). */
    public DorsalShellDesign withOverlap(double other) {
      return new DorsalShellDesign(make, length, other, fitGap, clearance, wall, vents);
    }
  }

  /**
   * What closes it.
   *
   * @param kind wrap, sleeve, tape or strap
   * @param width of the wrap, tape or strap (mm)
   * @param tension the wrap is laid with (N), where it is stated
   * @param layers of the wrap
   * @param overlap of each turn on the one before, as a share of the width
   * @param lap of a strap on itself (mm)
   */
  public record ClosureDesign(
      ClosureKind kind,
      double width,
      OptionalDouble tension,
      int layers,
      double overlap,
      double lap) {
    private static final double OVER_TROUGH = 0.5;

    /** A shell spreads the pull over the dorsum and holds with less of it. */
    private static final double OVER_SHELL = 0.35;

    /** Pull it is laid with (N): as stated, or as it suits a trough alone or one under a shell. */
    public double tension(boolean overShell) {
      return tension.orElse(overShell ? OVER_SHELL : OVER_TROUGH);
    }
  }

  /**
   * Material: a name from the material table, and the user's own values over it.
   *
   * @param name in the table
   * @param modulus Young's modulus (MPa)
   * @param poisson Poisson's ratio
   * @param density g/cm³
   * @param allowableStrain as a share
   */
  public record MaterialDesign(
      String name,
      OptionalDouble modulus,
      OptionalDouble poisson,
      OptionalDouble density,
      OptionalDouble allowableStrain) {
    /** The same material of another Young's modulus (MPa). */
    public MaterialDesign withModulus(double other) {
      return new MaterialDesign(name, OptionalDouble.of(other), poisson, density, allowableStrain);
    }
  }

  /**
   * How it is printed.
   *
   * @param process filament, powder or resin
   * @param edgeLength of the mesh's triangles (mm)
   * @param label whether the reference is raised on each piece
   * @param proximal what tells the dorsal shell's proximal end
   */
  public record PrintDesign(
      ProcessDesign process, double edgeLength, boolean label, ProximalSign proximal) {}

  /**
   * How it is made at the bench.
   *
   * @param way by hand or printed
   * @param paper of the sheets
   */
  public record MakingDesign(Making way, Paper paper) {}

  /**
   * The load the finger is held against.
   *
   * @param moment of the finger about the PIP axis (N·mm); empty follows from the joint
   * @param proximalZone length over which the proximal end presses (mm)
   * @param distalZone length over which the distal end presses (mm)
   */
  public record SupportDesign(OptionalDouble moment, double proximalZone, double distalZone) {}
}
