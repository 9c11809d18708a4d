package org.midlateral.viewer.section;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.midlateral.cut.Outline;
import org.midlateral.digit.SkinFoot;
import org.midlateral.digit.Slice;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.Material;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.AreaMoments;
import org.midlateral.mechanics.Loop;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.mesh.query.BoundingVolumeHierarchy;
import org.midlateral.recipe.joint.JointHeld;
import org.midlateral.recipe.joint.JointWords;
import org.midlateral.recipe.joint.PressureField;
import org.midlateral.recipe.rigidity.HeldPieces;
import org.midlateral.solid.Solid;
import org.midlateral.viewer.colour.Scale;
import org.midlateral.viewer.render.SceneItem.VertexColours;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.PieceShape;
import org.midlateral.viewer.scene.Quantity;

/**
 * One quantity at every vertex of every piece, measured on the meshes.
 *
 * @param quantity which
 * @param scale from value to colour; null where there is no quantity
 * @param values one a vertex, by piece in the order of the design's pieces
 * @param colours the same as colours; empty for a piece that has no values
 * @param pressure on the skin, where it is shown
 * @param note what to say beside it, or why there is none; empty for nothing
 */
public record Colouring(
    Quantity quantity,
    Scale scale,
    List<double[]> values,
    List<Optional<VertexColours>> colours,
    Optional<SkinPressure> pressure,
    String note) {
  private static final double KPA = 1000;
  private static final double STATION_STEP = 1.5;

  /** Pieces in their own plain colours. */
  public static final Colouring PLAIN = plain("");

  private static final String NO_ROOM =
      "There is no room on this finger for the forces that strain is computed under";

  private static final String WITHOUT_VENTS =
      "Computed as without vents: beside them strain is larger than shown";

  public Colouring {
    values = List.copyOf(values);
    colours = List.copyOf(colours);
  }

  /** The colouring of a design; plain where what is asked for cannot be had. */
  public static Colouring of(DesignShapes design, Quantity quantity) {
    return switch (quantity) {
      case NONE -> PLAIN;
      case PRESSURE -> pressure(design);
      case STRAIN_TROUGH, STRAIN_PAIR -> strain(design, quantity);
      case CLEARANCE, WALL, RIGIDITY -> of(quantity, measured(design, quantity), "");
    };
  }

  private static Colouring plain(String note) {
    return new Colouring(Quantity.NONE, null, List.of(), List.of(), Optional.empty(), note);
  }

  /** What presses on the skin under each piece, and in a line how the joint is held. */
  private static Colouring pressure(DesignShapes design) {
    try {
      JointHeld held = JointHeld.of(design.orthosis());
      String note = new JointWords(held).line().replace("; ", ";\n");
      return pressure(design, SkinPressure.of(held), note);
    } catch (DesignRefused | NotComputable e) {
      return plain("How the joint is held cannot be computed: " + e.getMessage());
    }
  }

  /**
   * The pressure under a design much like one that was computed, in passing; empty where it cannot
   * be had so.
   */
  public static Optional<Colouring> passing(DesignShapes design, SkinPressure like) {
    return like.carriedTo(design.orthosis()).map(pressure -> pressure(design, pressure, ""));
  }

  private static Colouring pressure(DesignShapes design, SkinPressure pressure, String note) {
    boolean left = design.orthosis().order().measurements().hand() == Hand.LEFT;
    List<double[]> values =
        design.pieces().stream()
            .parallel()
            .map(piece -> piece.spread(pressures(piece, left, pressure.field())))
            .toList();
    Scale scale = Quantity.PRESSURE.scale(values);
    return on(Quantity.PRESSURE, scale, values, Optional.of(pressure), note);
  }

  /** Whether it is shown in passing, until the design itself is computed. */
  public boolean isPassing() {
    return pressure.map(SkinPressure::passing).orElse(false);
  }

  /** What is computed is drawn as for a right hand (kPa). */
  private static double[] pressures(PieceShape piece, boolean left, PressureField field) {
    Solid solid = left ? piece.solid().mirrored() : piece.solid();
    double[] pressure = new double[solid.innerVertices()];
    Arrays.parallelSetAll(
        pressure,
        i -> {
          Slice slice = solid.piece().digit().slice(solid.station(i));
          double girth = slice.girth(solid.skinAngle(i));
          double round = slice.circumference();
          return KPA * field.under(piece.isDorsal(), solid.station(i), girth, round);
        });
    return pressure;
  }

  private static Colouring strain(DesignShapes design, Quantity quantity) {
    String note = HeldPieces.leavesVentsOut(design.orthosis()) ? WITHOUT_VENTS : "";
    List<Finding> findings = new ArrayList<>();
    try {
      return Strains.of(design, quantity == Quantity.STRAIN_PAIR, findings)
          .map(values -> of(quantity, values, note))
          .orElseGet(() -> plain(findings.get(0).text()));
    } catch (DesignRefused refused) {
      return plain(NO_ROOM);
    }
  }

  private static Colouring of(Quantity quantity, List<double[]> values, String note) {
    return on(quantity, quantity.scale(values), values, Optional.empty(), note);
  }

  /** The same values in the colours of another scale. */
  public Colouring on(Scale other) {
    return on(quantity, other, values, pressure, note);
  }

  private static Colouring on(
      Quantity quantity,
      Scale scale,
      List<double[]> values,
      Optional<SkinPressure> pressure,
      String note) {
    List<Optional<VertexColours>> colours =
        values.stream()
            .map(
                piece ->
                    Double.isNaN(piece[0])
                        ? Optional.<VertexColours>empty()
                        : Optional.of(colours(scale, piece)))
            .toList();
    return new Colouring(quantity, scale, values, colours, pressure, note);
  }

  private static VertexColours colours(Scale scale, double[] values) {
    int[] rgb = new int[values.length];
    Arrays.parallelSetAll(rgb, v -> scale.colour(values[v]));
    return new VertexColours(rgb);
  }

  private static List<double[]> measured(DesignShapes design, Quantity quantity) {
    List<double[]> values = new ArrayList<>();
    for (PieceShape piece : design.pieces()) {
      values.add(piece.spread(inner(design, piece, quantity)));
    }
    return values;
  }

  private static double[] inner(DesignShapes design, PieceShape piece, Quantity quantity) {
    return switch (quantity) {
      case NONE, PRESSURE, STRAIN_TROUGH, STRAIN_PAIR ->
          throw new IllegalArgumentException("not measured vertex by vertex");
      case CLEARANCE -> clearance(design, piece.solid());
      case WALL -> wall(piece.solid());
      case RIGIDITY -> rigidity(design, piece);
    };
  }

  /** Distance of each inner vertex from the skin (mm). */
  private static double[] clearance(DesignShapes design, Solid solid) {
    SkinFoot foot = new SkinFoot(design.orthosis().digit());
    TriangleMesh mesh = solid.mesh();
    double[] gap = new double[solid.innerVertices()];
    for (int i = 0; i < gap.length; i++) {
      foot.find(mesh.x(i), mesh.y(i), mesh.z(i), solid.skinAngle(i), solid.station(i));
      gap[i] = foot.distance();
    }
    return gap;
  }

  /** Distance of each inner vertex from the outer surface (mm). */
  private static double[] wall(Solid solid) {
    BoundingVolumeHierarchy outer = BoundingVolumeHierarchy.of(solid.outer());
    TriangleMesh mesh = solid.mesh();
    double[] wall = new double[solid.innerVertices()];
    for (int i = 0; i < wall.length; i++) {
      wall[i] = outer.distance(mesh.x(i), mesh.y(i), mesh.z(i), Double.POSITIVE_INFINITY);
    }
    return wall;
  }

  /** EI of the piece's own section at the station of each inner vertex (N·mm²). */
  private static double[] rigidity(DesignShapes design, PieceShape piece) {
    Outline outline = piece.solid().piece().outline();
    double modulus = Material.of(design.orthosis().order().design().material()).modulus();
    int steps = (int) Math.ceil((outline.distal() - outline.proximal()) / STATION_STEP);
    double[] along = new double[steps + 1];
    for (int k = 0; k <= steps; k++) {
      double s = outline.proximal() + (outline.distal() - outline.proximal()) * k / steps;
      List<Loop> loops = design.sections().loops(s).get(design.pieces().indexOf(piece));
      along[k] = modulus * AreaMoments.of(loops).aboutY();
    }
    double[] rigidity = new double[piece.solid().innerVertices()];
    for (int i = 0; i < rigidity.length; i++) {
      double share =
          (piece.solid().station(i) - outline.proximal()) / (outline.distal() - outline.proximal());
      double at = Math.max(0, Math.min(steps, share * steps));
      int k = Math.min((int) at, steps - 1);
      rigidity[i] = along[k] + (at - k) * (along[k + 1] - along[k]);
    }
    return rigidity;
  }
}
