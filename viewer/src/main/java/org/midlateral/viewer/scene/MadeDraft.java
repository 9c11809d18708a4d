package org.midlateral.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.midlateral.document.Defect;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.Refusals;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.Orthosis;
import org.midlateral.viewer.draft.Draft;
import org.midlateral.viewer.draft.DraftText;

/**
 * What came of a draft.
 *
 * @param draft what was made
 * @param errors values that cannot stand
 * @param findings cautions and refusals
 * @param order that was read and can be inspected; empty where values cannot stand
 * @param shapes what there is to show; empty where the draft was refused
 */
public record MadeDraft(
    Draft draft,
    List<InputError> errors,
    List<Finding> findings,
    Optional<Order> order,
    Optional<DesignShapes> shapes) {

  public MadeDraft {
    errors = List.copyOf(errors);
    findings = List.copyOf(findings);
  }

  /** Makes a draft, as far as it goes. */
  public static MadeDraft of(Draft draft) {
    return of(draft, Optional.empty());
  }

  /**
   * The same.
   *
   * @param before what was shown before, whose finger may be shown again
   * @throws CancellationException where it is called off meanwhile
   */
  public static MadeDraft of(Draft draft, Optional<DesignShapes> before) {
    Orders.Result read = Orders.parse(DraftText.write(draft), "", List.of());
    if (!read.ok()) {
      return new MadeDraft(draft, read.errors(), List.of(), Optional.empty(), Optional.empty());
    }
    Order order = read.order();
    List<Finding> findings = new ArrayList<>(read.cautions());
    Optional<DesignShapes> shapes = Optional.empty();
    try {
      Orthosis made = Orthosis.make(order);
      made.missing().ifPresent(missing -> findings.add(0, missing));
      shapes = Optional.of(DesignShapes.of(made, before));
    } catch (DesignRefused e) {
      findings.add(0, e.finding());
    } catch (CancellationException e) {
      // Nothing came of it: it is no answer about the draft, which may be asked for again.
      throw e;
    } catch (RuntimeException e) {
      findings.add(0, defect(e, order));
      return new MadeDraft(draft, List.of(), findings, Optional.empty(), Optional.empty());
    }
    return new MadeDraft(draft, List.of(), findings, Optional.of(order), shapes);
  }

  /** The same draft, of which no more is shown than can be made. */
  public MadeDraft showing(Orthosis madeOfIt) {
    return new MadeDraft(
        draft, errors, findings, order, Optional.of(DesignShapes.of(madeOfIt, shapes)));
  }

  /** Tells of a defect; the file that goes with it lies in the temporary folder. */
  static Finding defect(RuntimeException e, Order order) {
    Defect defect = new Defect(e, List.of("midlateral view"), List.of(order));
    return Refusals.defect(e.toString(), Defect.request(defect.write(Optional.empty())));
  }
}
