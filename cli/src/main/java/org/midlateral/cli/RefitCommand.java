package org.midlateral.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.midlateral.cli.line.CommandForm;
import org.midlateral.cli.line.Parameter;
import org.midlateral.cli.line.PathValue;
import org.midlateral.cli.line.ReadLine;
import org.midlateral.cli.line.ReadyCommand;
import org.midlateral.cli.text.FindingsJson;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.ReadingError;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.product.ProductRecipe;
import org.midlateral.recipe.refit.Refit;
import org.midlateral.recipe.refit.RefitReport;

/** How a piece made from one file sits on a finger measured later. */
final class RefitCommand implements ReadyCommand {
  private static final Parameter<Path> AGAINST =
      Parameter.option(
              "--against",
              "FILE",
              new PathValue(),
              "Measurement file of the same finger, measured later.")
          .needed();

  static final CommandForm FORM =
      CommandForm.of(
              "Tells how a piece made from one file sits on the finger measured later.",
              "Estimate, for comparison; does not clear a piece for use.")
          .with(AGAINST)
          .with(InputOptions.ALL)
          .with(MessageOptions.ALL)
          .examples(
              "midlateral refit finger.yaml --against finger-later.yaml",
              "midlateral refit finger.yaml --against finger-later.yaml --json");

  private final StandardStreams streams;
  private final Path against;
  private final InputOptions input;
  private final MessageOptions messages;

  RefitCommand(ReadLine line, StandardStreams streams) {
    this.streams = streams;
    this.against = line.must(AGAINST);
    this.input = new InputOptions(line);
    this.messages = MessageOptions.of(line);
  }

  @Override
  public List<Order> orders() {
    return input.orders();
  }

  @Override
  public int call() throws IOException {
    Orders.Result made = input.read();
    Orders.Result later = input.read(against);
    if (!made.ok() || !later.ok()) {
      return wrong(made, later);
    }
    List<Finding> findings = new ArrayList<>(made.cautions());
    findings.addAll(later.cautions());
    if (made.order().measurements().digit() != later.order().measurements().digit()
        || made.order().measurements().hand() != later.order().measurements().hand()) {
      findings.add(
          Finding.caution(
              "another-finger",
              "digit",
              "The two files are of different fingers: hand or digit differ.",
              Double.NaN,
              Double.NaN));
    }
    try {
      Orthosis orthosis = Orthosis.make(made.order());
      orthosis.missing().ifPresent(missing -> findings.add(0, missing));
      List<Refit> refits = Refit.of(orthosis, later.order().measurements());
      if (messages.json()) {
        streams.out().print(RefitReport.of(made.order(), later.order(), refits, findings).json());
      } else {
        messages.tell(findings, streams);
        streams.out().print(table(refits, new Lengths(later.order().measurements().unit())));
      }
      return orthosis.missing().isEmpty()
          ? ExitStatus.DONE.code()
          : ExitStatus.DESIGN_REFUSED.code();
    } catch (DesignRefused refused) {
      findings.add(ProductRecipe.advised(made.order(), refused));
      return messages.refused(findings, streams);
    }
  }

  /** Tells the errors of both files at once. */
  private int wrong(Orders.Result made, Orders.Result later) throws IOException {
    if (messages.json()) {
      List<InputError> errors = new ArrayList<>(made.errors());
      errors.addAll(later.errors());
      List<Finding> cautions = new ArrayList<>(made.cautions());
      cautions.addAll(later.cautions());
      streams.out().print(FindingsJson.text(false, errors, cautions));
    } else {
      messages.tell(made, streams);
      messages.tell(later, streams);
    }
    return ExitStatus.WRONG_INPUT.code();
  }

  /** Where a girth lies, in words. */
  private static String side(double girth) {
    return String.format(
        Locale.ROOT,
        "%.0f mm %s of the volar midline",
        Math.abs(girth),
        girth >= 0 ? "radial" : "ulnar");
  }

  private static String table(List<Refit> refits, Lengths lengths) {
    StringBuilder text = new StringBuilder();
    for (Refit refit : refits) {
      line(text, "%s: %s. %s%n", refit.piece(), refit.verdict().word(), refit.why());
      line(
          text,
          "  gap to the skin: least %.2f mm (%s, %s), mean %.2f mm, as made %.2f mm; pressed in"
              + " over %.1f %%%n",
          refit.min(),
          Finding.fromWeb(refit.minStation()),
          side(refit.minGirth()),
          refit.mean(),
          refit.asMade(),
          100 * refit.pressedShare());
      line(
          text,
          "  %-18s %10s %10s %10s %16s%n",
          "level",
          "least mm",
          "mean mm",
          "as made",
          "girth change " + lengths.unit().symbol());
      for (Refit.AtLevel level : refit.levels()) {
        line(
            text,
            "  %-18s %10.2f %10.2f %10.2f %16s%n",
            level.level(),
            level.min(),
            level.mean(),
            level.asMade(),
            Double.isNaN(level.circumferenceChange())
                ? "\u2013"
                : (level.circumferenceChange() < 0 ? "" : "+")
                    + lengths.text(level.circumferenceChange()));
      }
    }
    line(
        text,
        "The angle is read first: a change of more than %.1f degrees counts. Tight: pressed into"
            + " the skin by more than %.1f mm over more than a spot (%.1f %%), or at all over"
            + " more than %.0f %%; loose: %.1f mm farther off than when it was made, around a"
            + " level.%nEstimate, for comparison; does not clear a piece for use.%n",
        ReadingError.GONIOMETER.smallestChange(),
        Refit.TIGHT_DEPTH,
        100 * Refit.SPOT,
        100 * Refit.TIGHT_SHARE,
        Refit.LOOSE);
    return text.toString();
  }

  private static void line(StringBuilder text, String format, Object... values) {
    text.append(String.format(Locale.ROOT, format, values));
  }
}
