package org.midlateral.accuracy;

/**
 * The bounds of the invariants G1 to G12, and the shares of the chord error that the mesher spends
 * so that G9 holds. What is not here has no number: G6, G7 and G12 are exact, G11 follows from the
 * outline.
 *
 * <p><b>The chord error and its shares.</b> Shares do not add up on a face: its inside has {@link
 * #CHORD_OF_FACES}, its edge {@link #CHORD_OF_EDGES}, and two more are what these begin with. Each
 * is less than {@link #CHORD} by what is left out when an edge's error is told from its two ends,
 * which is of the fourth order. The rim has two at once: {@link #CHORD_ROUND_RIM} across it,
 * outward, where the corners of its strips stand, and {@link #CHORD_ALONG_RIM} along it, inward on
 * the outer edge, where the strips' own sag of some 0.006 mm comes on top: 0.0145 mm one way and
 * 0.016 mm the other. Round a vent both are outward, but the faces' bend makes the chords there
 * shorter: 0.018 mm was measured against a mesh four times finer.
 */
public final class ErrorBudget {
  /**
   * G1: the skin's mesh, cut at a taped level, measures what the tape read, to this (mm). A
   * twentieth of what tapes read to.
   */
  public static final double TAPE = 0.05;

  /**
   * G2: a finished edge misses the trim line by no more than this (mm), so that the girth between
   * the two edges is right within twice as much. A blade cuts no truer; common practice, no source.
   */
  public static final double TRIM = 0.05;

  /**
   * G3: the share of the wall that is left anywhere. Flat triangles take {@link #CHORD} off at the
   * worst, which on the thinnest wall that may be asked for, 0.8 mm, is 0.025 of it: a wall that is
   * thinner than this share was squeezed by the design, not by the mesh.
   */
  public static final double LEAST_WALL = 0.97;

  /** G9: flat triangles stand off the exact surface by no more than this (mm). */
  public static final double CHORD = 0.02;

  /**
   * G4: the inside comes nearer to the skin than was asked for by no more than this (mm). It is
   * what flat triangles may be off.
   */
  public static final double CLEARANCE = CHORD;

  /**
   * G4: the gap at a relief's centre is clearance and height, to this (mm). The centre lies
   * somewhere in a triangle whose corners lie lower; half a printed layer hides more. Common
   * practice, no source.
   */
  public static final double RELIEF = 0.05;

  /**
   * G5: trough and shell come nearer to each other than the fit gap by no more than this (mm). Two
   * surfaces face each other, each off by {@link #CHORD} at the worst, and 0.01 mm is left.
   */
  public static final double FIT_GAP = 0.05;

  /**
   * G8: no angle of a triangle is smaller (degrees). Slivers have no normal to speak of, and what
   * is computed on them loses digits; common practice, no source.
   */
  public static final double LEAST_ANGLE = 10;

  /** G8: nearly all triangles have no angle smaller than this (degrees). Common practice. */
  public static final double SHARP_ANGLE = 20;

  /** G8: the share of the triangles that may have an angle under {@link #SHARP_ANGLE}. */
  public static final double SHARP_SHARE = 0.01;

  /**
   * G10: a file in inches gives the solid of the same file in millimetres, relative to its size:
   * what rounding leaves of 16 digits behind some thousand operations.
   */
  public static final double UNITS = 1e-9;

  /**
   * Of {@link #CHORD}, on the faces (mm): an edge or a triangle inside a face is divided where its
   * corners tell that it would stand off by more. Spent in {@code Refinement}.
   */
  public static final double CHORD_OF_FACES = 0.0175;

  /**
   * What even triangles would have on the faces (mm): the points are spaced for it, and the uneven
   * triangles among them, which have more, are divided by {@link #CHORD_OF_FACES}. A little over
   * that one, so that what bends as foreseen is not divided for nothing. Spent in {@code
   * SizingField}.
   */
  public static final double CHORD_OF_EVEN_TRIANGLES = 0.018;

  /**
   * Of {@link #CHORD}, on a face's own edge (mm), whose chords no refinement divides, because the
   * rim hangs on them: an edge that has more is spaced anew. Spent in {@code EdgeLoop}.
   */
  public static final double CHORD_OF_EDGES = 0.017;

  /**
   * What a face's edge is spaced for at first (mm). Its points are then seated off the finished
   * edge, where the surfaces may bend more: with this the first spacing nearly always keeps {@link
   * #CHORD_OF_EDGES}. Spent in {@code EdgeLoop}.
   */
  public static final double CHORD_OF_EDGES_AT_FIRST = 0.0105;

  /**
   * Of {@link #CHORD}, along the rim (mm): the sagitta of a chord of the finished edge. Half of it,
   * because the strips' sag comes on top. Spent in {@code RingSamples}.
   */
  public static final double CHORD_ALONG_RIM = 0.010;

  /**
   * Of {@link #CHORD}, across the rim (mm): the strips' corners stand outside its round, so that
   * they enclose the round's area, and by no more than this. Spent in {@code RimArc}.
   */
  public static final double CHORD_ROUND_RIM = 0.0145;

  private ErrorBudget() {}
}
