package org.midlateral.mechanics.held;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.SkinFoot;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.finite.ShellModel;
import org.midlateral.mechanics.finite.SurfacePoint;
import org.midlateral.mechanics.finite.Tie;
import org.midlateral.piece.Midline;
import org.midlateral.piece.Piece;
import org.midlateral.solid.Solid;
import org.midlateral.solid.SolidMesher;

/**
 * A trough, or a trough with its dorsal shell bonded on, as a thin shell: each piece's own
 * mid-surface up to its finished edge. Immutable.
 *
 * <p><b>Bonded.</b> The two pieces stay two layers with the gap between them, and in the overlap
 * every node of the dorsal layer is tied to the trough's: it moves as a point fixed to the trough's
 * wall would, so that the two bend as one section there. It is what glue without give would do, and
 * so the stiffer of the two bounds; a taped pair lies between it and the trough alone.
 *
 * <p><b>Closed.</b> Where the dorsal piece ends edge to edge with the trough, as in the whole tube
 * that wraps are compared with, the nodes on its finished edge are tied to the trough's, and the
 * wall is whole across the seam: the tube stands for one piece, which has no rims there.
 */
public final class FingerShell {
  /** The triangles' edge is one wall, within these bounds (mm). */
  private static final double SHORTEST_EDGE = 1.2;

  private static final double LONGEST_EDGE = 1.6;

  /** Chords err as on a printed mesh with edges so many times shorter. */
  private static final double COARSE = 2.6;

  /**
   * A piece is computed on edges so many times the usual, the next where a mesh fails: the
   * extension it loses differs by under half a percent from that on the usual ones, in a third of
   * the time.
   */
  private static final double[] EDGES = {1.6, 1.2, 1};

  private final List<ShellLayer> layers;
  private final List<LayerLocator> maps;
  private final ShellModel model;

  /** A node on the common edge lies no farther outside than this share of a triangle's height. */
  private static final double ON_EDGE = 0.2;

  private FingerShell(List<ShellLayer> layers, boolean edgeToEdge, Isotropic material)
      throws NotComputable {
    this.layers = List.copyOf(layers);
    maps = layers.stream().map(LayerLocator::new).toList();
    double[] xyz = {};
    double[] wall = {};
    int[] corners = {};
    for (ShellLayer layer : layers) {
      int first = wall.length;
      xyz = joined(xyz, layer.xyz);
      wall = joined(wall, layer.wall);
      int[] all = Arrays.copyOf(corners, corners.length + layer.corners.length);
      for (int k = 0; k < layer.corners.length; k++) {
        all[corners.length + k] = first + layer.corners[k];
      }
      corners = all;
    }
    ShellModel loose = ShellModel.of(xyz, corners, wall, material);
    if (layers.size() == 1) {
      model = loose;
    } else if (edgeToEdge) {
      List<Tie> ties = tiesOnEdge(loose);
      model = ShellModel.of(xyz, corners, wholeAcross(ties, wall), material).tied(ties);
    } else {
      model = loose.tied(tiesInOverlap(loose));
    }
  }

  /** The walls, with those on the crests that are tied as thick as beside them (mm). */
  private double[] wholeAcross(List<Tie> seam, double[] wall) {
    double[] whole = wall.clone();
    for (Tie tie : seam) {
      whole[tie.node()] = wall[besideCrest(tie.node())];
      for (int leader : tie.leaders()) {
        whole[leader] = wall[besideCrest(leader)];
      }
    }
    return whole;
  }

  /** The vertex of the edge beside a node on the crest; any other node itself. */
  private int besideCrest(int node) {
    ShellLayer layer = layers.get(layerOf(node));
    return node - firstNode(layerOf(node)) < layer.inner ? node : node - layer.inner;
  }

  /**
   * One piece alone, on a mesh made for the purpose.
   *
   * @throws DesignRefused where the surface folds at an edge
   * @throws NotComputable where the middle of the wall folds
   */
  public static FingerShell alone(Piece piece, Isotropic material)
      throws DesignRefused, NotComputable {
    return coarse(edges -> of(mesh(piece, edges), material));
  }

  /**
   * The trough and its dorsal shell, bonded, on meshes made for the purpose.
   *
   * @throws DesignRefused where a surface folds at an edge
   * @throws NotComputable where the middle of a wall folds
   */
  public static FingerShell bonded(Piece trough, Piece dorsal, Isotropic material)
      throws DesignRefused, NotComputable {
    return coarse(edges -> bonded(mesh(trough, edges), mesh(dorsal, edges), material));
  }

  /**
   * The same of two that are meshed each for itself, on those meshes where they do.
   *
   * @throws DesignRefused where a surface folds at an edge
   * @throws NotComputable where the middle of a wall folds
   */
  public static FingerShell bonded(FingerShell trough, FingerShell dorsal, Isotropic material)
      throws DesignRefused, NotComputable {
    try {
      List<ShellLayer> both = List.of(trough.layers.get(0), dorsal.layers.get(0));
      return new FingerShell(both, false, material);
    } catch (NotComputable finer) {
      return bonded(trough.trough().piece(), dorsal.trough().piece(), material);
    }
  }

  /**
   * The trough and the dorsal piece that closes it edge to edge, on meshes made for the purpose.
   *
   * @throws DesignRefused where a surface folds at an edge
   * @throws NotComputable where the middle of a wall folds
   */
  public static FingerShell closed(Piece trough, Piece rest, Isotropic material)
      throws DesignRefused, NotComputable {
    return coarse(
        edges ->
            new FingerShell(
                List.of(new ShellLayer(mesh(trough, edges)), new ShellLayer(mesh(rest, edges))),
                true,
                material));
  }

  /**
   * The same of a trough that is meshed already, on that mesh where it does.
   *
   * @throws DesignRefused where a surface folds at an edge
   * @throws NotComputable where the middle of a wall folds
   */
  public static FingerShell closed(FingerShell trough, Piece rest, Isotropic material)
      throws DesignRefused, NotComputable {
    try {
      List<ShellLayer> both = List.of(trough.layers.get(0), new ShellLayer(mesh(rest, EDGES[0])));
      return new FingerShell(both, true, material);
    } catch (NotComputable finer) {
      return closed(trough.trough().piece(), rest, material);
    }
  }

  /**
   * The trough alone, on the mesh it has.
   *
   * @throws NotComputable where the middle of the wall folds
   */
  public static FingerShell of(Solid trough, Isotropic material) throws NotComputable {
    return new FingerShell(List.of(new ShellLayer(trough)), false, material);
  }

  /**
   * The trough and its dorsal shell, bonded, on the meshes they have.
   *
   * @throws NotComputable where the middle of a wall folds
   */
  public static FingerShell bonded(Solid trough, Solid dorsal, Isotropic material)
      throws NotComputable {
    return new FingerShell(
        List.of(new ShellLayer(trough), new ShellLayer(dorsal)), false, material);
  }

  /** Meshes on edges so many times the usual. */
  private interface Meshing {
    FingerShell on(double edges) throws DesignRefused, NotComputable;
  }

  private static FingerShell coarse(Meshing meshing) throws DesignRefused, NotComputable {
    for (int k = 0; k + 1 < EDGES.length; k++) {
      try {
        return meshing.on(EDGES[k]);
      } catch (NotComputable finer) {
        // A coarse mesh may leave out a corner of the edge that a finer one has.
      }
    }
    return meshing.on(EDGES[EDGES.length - 1]);
  }

  /** A mesh for computing, its edges a factor times those usual. */
  public static Solid mesh(Piece piece, double factor) throws DesignRefused {
    double edge = Math.max(SHORTEST_EDGE, Math.min(LONGEST_EDGE, piece.wall()));
    return SolidMesher.mesh(piece, edge / COARSE, COARSE * factor);
  }

  private static double[] joined(double[] a, double[] b) {
    double[] both = Arrays.copyOf(a, a.length + b.length);
    System.arraycopy(b, 0, both, a.length, b.length);
    return both;
  }

  private List<Tie> tiesInOverlap(ShellModel loose) {
    int faces = trough().innerTriangles();
    return ties(loose, 0, layers.get(1).inner, s -> s.depth() >= 0 && s.triangle() < faces);
  }

  private List<Tie> tiesOnEdge(ShellModel loose) {
    ShellLayer dorsal = layers.get(1);
    return ties(loose, dorsal.inner, dorsal.nodeCount(), s -> s.depth() >= -ON_EDGE);
  }

  private List<Tie> ties(ShellModel loose, int from, int to, Predicate<SurfacePoint> meets) {
    ShellLayer dorsal = layers.get(1);
    Midline midline = dorsal.solid.piece().midline();
    int first = layers.get(0).nodeCount();
    List<Tie> ties = new ArrayList<>();
    for (int i = from; i < to; i++) {
      SurfacePoint spot = maps.get(0).find(dorsal.station[i], midline.skinAngle(dorsal.turn[i]));
      if (meets.test(spot)) {
        ties.add(loose.bond(spot.triangle(), spot.weights(), first + i));
      }
    }
    return ties;
  }

  /** The mid-surface: the trough's nodes and triangles first, then the dorsal shell's. */
  public ShellModel model() {
    return model;
  }

  /** The skin that the pieces lie on. */
  public DigitSurface digit() {
    return trough().piece().digit();
  }

  /** The trough as it was meshed. */
  public Solid trough() {
    return layers.get(0).solid;
  }

  /** The pieces as they were meshed: the trough first, or the one piece there is. */
  public List<Solid> solids() {
    return layers.stream().map(layer -> layer.solid).toList();
  }

  /** Whether a dorsal shell closes it. */
  public boolean closed() {
    return layers.size() > 1;
  }

  /** Where a node of the mid-surface is: station and girth from the volar midline (mm). */
  public double[] skinPlace(int node) {
    int first = firstNode(layerOf(node));
    ShellLayer layer = layers.get(layerOf(node));
    double start = layer.solid.piece().midline().skinAngle(layer.turn[node - first]);
    SkinFoot foot = new SkinFoot(digit());
    Vector3D p = model.node(node);
    foot.find(p.getX(), p.getY(), p.getZ(), start, layer.station[node - first]);
    return new double[] {foot.station(), foot.girth()};
  }

  private int layerOf(int node) {
    return node < layers.get(0).nodeCount() ? 0 : 1;
  }

  /** Number of the first node of a layer. */
  int firstNode(int layer) {
    return layer == 0 ? 0 : layers.get(0).nodeCount();
  }

  ShellLayer layer(int k) {
    return layers.get(k);
  }

  /** A place of the trough's mid-surface. */
  SurfacePoint onTrough(double station, double turn) {
    return maps.get(0).find(station, turn);
  }

  /** A place of a piece's mid-surface: 0 the trough, 1 the dorsal shell. */
  SurfacePoint on(int layer, double station, double turn) {
    SurfacePoint spot = maps.get(layer).find(station, turn);
    int before = layer == 0 ? 0 : layers.get(0).corners.length / 3;
    return new SurfacePoint(before + spot.triangle(), spot.weights());
  }
}
