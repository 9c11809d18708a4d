package org.midlateral.recipe.batch;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.measurement.Machine;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.record.MakingSource;

/**
 * How a run goes.
 *
 * @param folder that exists, for the orders' folders and the report
 * @param formats of the solids' files
 * @param overrides each {@code KEY=VALUE}, laid over every order
 * @param threads that make orders
 * @param options that were chosen
 * @param clock that dates the records
 * @param machine all orders are printed on, where its profile was given
 */
public record BatchSettings(
    Path folder,
    List<SolidFormat> formats,
    List<String> overrides,
    int threads,
    Set<RunOption> options,
    Clock clock,
    Optional<Machine> machine) {
  /** What a run may do otherwise. */
  public enum RunOption {
    /** Former parts are deleted instead of being moved. */
    DELETE_SUPERSEDED,
    /** Orders that the source does not name keep their folders. */
    KEEP_OTHERS,
    /** Every byte of a former making is read before it is taken as unchanged. */
    THOROUGH,
    /** No part is labelled but where the order asks for it. */
    NO_LABEL,
    /** Files of solids are named after order, part, revision and commit. */
    FULL_NAMES,
    /** Mechanics and documents for the bench too. */
    SHEETS;

    /** Whether other files come of it. */
    boolean changesFiles() {
      return this == NO_LABEL || this == FULL_NAMES || this == SHEETS;
    }

    /** As the command line has it, without its dashes. */
    String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  public BatchSettings {
    formats = List.copyOf(formats);
    overrides = List.copyOf(overrides);
    EnumSet<RunOption> chosen = EnumSet.noneOf(RunOption.class);
    chosen.addAll(options);
    options = Collections.unmodifiableSet(chosen);
  }

  /** A run without options, dated by the machine's clock. */
  public BatchSettings(
      Path folder, List<SolidFormat> formats, List<String> overrides, int threads) {
    this(folder, formats, overrides, threads, Set.of(), Clock.systemUTC(), Optional.empty());
  }

  /** The same with options. */
  public BatchSettings with(Set<RunOption> chosen) {
    return new BatchSettings(folder, formats, overrides, threads, chosen, clock, machine);
  }

  /** The same dated by another clock. */
  public BatchSettings with(Clock other) {
    return new BatchSettings(folder, formats, overrides, threads, options, other, machine);
  }

  /** The same for a machine. */
  public BatchSettings on(Machine printer) {
    return new BatchSettings(
        folder, formats, overrides, threads, options, clock, Optional.of(printer));
  }

  boolean has(RunOption option) {
    return options.contains(option);
  }

  /** An order as this run makes it. */
  Orders.Result understood(RawOrder raw, Orders.Result read) {
    Orders.Result labelled = labelled(raw, read);
    return machine
        .map(m -> new Orders.Result(labelled.order().on(m), labelled.errors(), labelled.cautions()))
        .orElse(labelled);
  }

  /** An order with its reference raised on its parts, if it says nothing of a label itself. */
  private Orders.Result labelled(RawOrder raw, Orders.Result read) {
    String key = "print.label";
    boolean asked =
        raw.states(key) || overrides.stream().anyMatch(one -> one.strip().startsWith(key));
    Order order = read.order();
    if (asked || has(RunOption.NO_LABEL) || order.byHand()) {
      return read;
    }
    Order labelled = order.withDesign(order.design().withLabel());
    return new Orders.Result(labelled, read.errors(), read.cautions());
  }

  /** What is asked for, for the record. */
  MakingSource source(RawOrder raw) {
    List<String> words = new ArrayList<>();
    options.stream().filter(RunOption::changesFiles).map(RunOption::word).forEach(words::add);
    machine.ifPresent(m -> m.settings().forEach((key, value) -> words.add(key + "=" + value)));
    return MakingSource.of(
        raw.placeAlone(), raw.text(), raw.stated(), overrides, formatKeys(), words);
  }

  List<String> formatKeys() {
    return formats.stream().map(SolidFormat::key).toList();
  }

  Superseded superseded() {
    return new Superseded(folder, has(RunOption.DELETE_SUPERSEDED));
  }
}
