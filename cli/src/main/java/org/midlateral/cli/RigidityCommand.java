package org.midlateral.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.midlateral.cli.line.CommandForm;
import org.midlateral.cli.line.NumberList;
import org.midlateral.cli.line.NumberValue;
import org.midlateral.cli.line.Parameter;
import org.midlateral.cli.line.PathValue;
import org.midlateral.cli.line.ReadLine;
import org.midlateral.cli.line.ReadyCommand;
import org.midlateral.cli.line.WholeNumber;
import org.midlateral.cli.line.WrongCommandLine;
import org.midlateral.cli.text.RigidityTable;
import org.midlateral.document.FileProblem;
import org.midlateral.document.WholeFile;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.NotComputable;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.product.ProductRecipe;
import org.midlateral.recipe.rigidity.Adviser;
import org.midlateral.recipe.rigidity.Bands;
import org.midlateral.recipe.rigidity.BendOfPieces;
import org.midlateral.recipe.rigidity.Rigidity;
import org.midlateral.recipe.rigidity.RigidityRecipe;
import org.midlateral.recipe.rigidity.RigidityReport;

/** Rigidity along the finger, the three forces, and the comparison of wraps. */
final class RigidityCommand implements ReadyCommand {
  private static final Parameter<List<Double>> WRAPS =
      Parameter.option(
              "--wrap",
              "SHARE",
              new NumberList(),
              "Heights of the trough to compare, as shares of the finger's girth (trough.wrap), 0.2"
                  + " to 0.6, and 1 for the closed tube; several with commas between them (default:"
                  + " 0.25,0.35,0.5,1).")
          .repeated();

  private static final Parameter<Double> WITHIN =
      Parameter.option(
          "--within",
          "DEGREES",
          new NumberValue(),
          "Lists designs that hold the joint within so many degrees, the lowest"
              + " pressure first.");

  private static final Parameter<Long> SAMPLES =
      Parameter.option(
          "--samples",
          "N",
          new WholeNumber(Integer.MIN_VALUE, Integer.MAX_VALUE),
          "Draws N sets of readings and prints the range of each result (default: none).");

  private static final Parameter<Long> SEED =
      Parameter.option(
          "--seed",
          "S",
          new WholeNumber(Long.MIN_VALUE, Long.MAX_VALUE),
          "Seed of the draws (default: 1).");

  private static final Parameter<Double> TAPE_ERROR =
      Parameter.option(
          "--tape-error",
          "MM",
          new NumberValue(),
          "Standard deviation of every tape reading, normal, in mm (default: 1).");

  private static final Parameter<Path> PLOT =
      Parameter.option(
          "--out", "PLOT.SVG", new PathValue(), "Writes the picture of EI along the finger.");

  private static final Parameter<Boolean> FORCE =
      Parameter.flag("--force", "Replaces a picture that exists.");

  static final CommandForm FORM =
      CommandForm.of(
              "Tells the angle the joint is held at, what presses where, and more.",
              "Whether the closure has the force, and what a night leaves of it; then the section's"
                  + " rigidity along the finger, and lower and higher troughs compared. Estimate,"
                  + " for comparison; does not clear a piece for use.")
          .with(WRAPS, WITHIN, SAMPLES, SEED, TAPE_ERROR, PLOT, FORCE)
          .with(InputOptions.ALL)
          .with(MessageOptions.ALL)
          .examples(
              "midlateral rigidity finger.yaml", "midlateral rigidity finger.yaml --within 5");

  private static final double LEAST_WRAP = 0.2;
  private static final double MOST_WRAP = 0.6;
  private static final double LEAST_WITHIN = 0.5;
  private static final double MOST_WITHIN = 30;
  private static final int MOST_SAMPLES = 100_000;

  private final StandardStreams streams;
  private final List<Double> wraps;
  private final Double within;
  private final int samples;
  private final long seed;
  private final double tapeError;
  private final Path plot;
  private final boolean force;
  private final InputOptions input;
  private final MessageOptions messages;

  RigidityCommand(ReadLine line, StandardStreams streams) throws WrongCommandLine {
    this.streams = streams;
    this.wraps = new ArrayList<>();
    for (List<Double> some : line.all(WRAPS)) {
      wraps.addAll(some);
    }
    this.within = line.one(WITHIN).orElse(null);
    this.samples = Math.toIntExact(line.one(SAMPLES).orElse(0L));
    this.seed = line.one(SEED).orElse(1L);
    this.tapeError = line.one(TAPE_ERROR).orElse(1.0);
    this.plot = line.one(PLOT).orElse(null);
    this.force = line.is(FORCE);
    requireOptions();
    this.input = new InputOptions(line);
    this.messages = MessageOptions.of(line);
  }

  @Override
  public List<Order> orders() {
    return input.orders();
  }

  @Override
  public int call() throws IOException {
    Orders.Result result = input.read();
    if (!result.ok()) {
      return messages.wrong(result, streams);
    }
    try {
      return compute(result.order(), result.cautions());
    } catch (FileProblem problem) {
      return WriteFailure.tell(problem, streams);
    } catch (DesignRefused e) {
      List<Finding> findings = new ArrayList<>(result.cautions());
      findings.add(ProductRecipe.advised(result.order(), e));
      return messages.refused(findings, streams);
    }
  }

  private void requireOptions() throws WrongCommandLine {
    for (double wrap : wraps) {
      if (!(wrap == 1 || wrap >= LEAST_WRAP && wrap <= MOST_WRAP)) {
        throw new WrongCommandLine("--wrap: " + wrap + " is neither 0.2 to 0.6 nor 1");
      }
    }
    if (within != null && !(within >= LEAST_WITHIN && within <= MOST_WITHIN)) {
      throw new WrongCommandLine("--within: " + within + " degrees is not 0.5 to 30 degrees");
    }
    if (samples < 0 || samples > MOST_SAMPLES) {
      throw new WrongCommandLine("--samples: " + samples + " is not 0 to " + MOST_SAMPLES);
    }
    if (!(tapeError >= 0 && tapeError <= 10)) {
      throw new WrongCommandLine("--tape-error: " + tapeError + " mm is not 0 to 10 mm");
    }
  }

  private int compute(Order order, List<Finding> cautions) throws IOException, DesignRefused {
    List<Double> compared = wraps.isEmpty() ? Rigidity.USUAL_WRAPS : wraps;
    // Nothing that is printed as text comes of elements, but for the joint.
    BendOfPieces by = messages.json() ? BendOfPieces.BEAMS_AND_ELEMENTS : BendOfPieces.BEAMS;
    Rigidity rigidity = RigidityRecipe.of(order, compared, by);
    Orthosis made = rigidity.orthosis();
    if (plot != null) {
      byte[] picture = rigidity.plot().svg();
      WholeFile.makeFolderOf(plot);
      WholeFile.write(plot, out -> out.write(picture), force);
    }
    List<Finding> findings = new ArrayList<>(made.missing().stream().toList());
    findings.addAll(cautions);
    findings.addAll(rigidity.findings());
    Adviser.DesignAdvice advice = within == null ? null : advice(rigidity, findings);
    Bands bands = samples == 0 ? null : bands(order, findings);
    if (messages.json()) {
      streams.out().print(RigidityReport.of(rigidity, findings, advice, bands).json());
    } else {
      messages.tell(findings, streams);
      streams.out().print(RigidityTable.text(rigidity, advice, bands));
    }
    return made.missing().isEmpty() ? ExitStatus.DONE.code() : ExitStatus.DESIGN_REFUSED.code();
  }

  /** The advice; null, and a note of why, where there is none. */
  private Adviser.DesignAdvice advice(Rigidity rigidity, List<Finding> findings)
      throws DesignRefused {
    try {
      return Adviser.of(rigidity.orthosis(), within);
    } catch (NotComputable e) {
      String text = "The advice is left out: " + e.getMessage() + ".";
      findings.add(Finding.note("advice", null, text, within, Double.NaN));
      return null;
    }
  }

  /** The bands; null, and a note of why, where none of the samples can be made. */
  private Bands bands(Order order, List<Finding> findings) throws DesignRefused {
    try {
      return Bands.sample(order, samples, seed, tapeError);
    } catch (NotComputable e) {
      String text = "The ranges are left out: " + e.getMessage() + ".";
      findings.add(Finding.note("bands", null, text, samples, Double.NaN));
      return null;
    }
  }
}
