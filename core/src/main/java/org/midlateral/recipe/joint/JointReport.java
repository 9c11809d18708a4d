package org.midlateral.recipe.joint;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.mechanics.JointBlock;
import org.midlateral.mechanics.JointBlock.BandBlock;
import org.midlateral.mechanics.JointBlock.ClosureForce;
import org.midlateral.mechanics.JointBlock.Peak;
import org.midlateral.mechanics.joint.JointAnswer;
import org.midlateral.mechanics.joint.JointAnswer.PressurePeak;
import org.midlateral.mechanics.joint.JointAnswer.Resultant;

/** The report's block on how the joint is held. */
public final class JointReport {
  private final JointHeld held;

  private JointReport(JointHeld held) {
    this.held = held;
  }

  /** The report's block. */
  public static JointBlock of(JointHeld held) {
    return new JointReport(held).block();
  }

  private JointBlock block() {
    JointAnswer answer = held.answer();
    var split = answer.split();
    var forces = answer.resultants();
    return new JointBlock(
        new JointWords(held).line(),
        answer.angle(),
        new JointBlock.Split(split.play(), split.skin(), split.plastic(), split.closure()),
        answer.friction(),
        held.worn().moment().atLimit(),
        momentSource(),
        new JointBlock.Forces(
            force(forces.proximal()), force(forces.middle()), force(forces.distal())),
        peak(answer.squareCentimetre()),
        answer.spot().pressure(),
        answer.worst().stream().map(this::peak).toList(),
        new ClosureForce(
            JointHeld.name(held.worn().closure()),
            held.within(),
            held.holds(),
            held.worn().fastening().tension(),
            held.leastTension().isPresent() ? held.leastTension().getAsDouble() : null,
            held.instead()),
        held.overnight().orElse(null),
        held.puttingOn()
            .map(on -> new JointBlock.Seating(on.spread(), on.rimForce(), on.force(), on.strain()))
            .orElse(null),
        held.bands().map(JointReport::block).orElse(null));
  }

  private static BandBlock block(AngleBands bands) {
    return new BandBlock(
        bands.draws(),
        bands.seed(),
        List.of(bands.angle().low(), bands.angle().high()),
        List.of(bands.pressure().low(), bands.pressure().high()));
  }

  private String momentSource() {
    var design = held.worn().made().order().design();
    var joint = design.holding().joint();
    boolean gauge = joint.gauge().force().isPresent() && joint.gauge().distance().isPresent();
    if (joint.moment().isPresent() || !gauge && design.support().moment().isPresent()) {
      return "stated";
    }
    return gauge ? "gauge" : "finger";
  }

  private static JointBlock.ArmedForce force(Resultant resultant) {
    return new JointBlock.ArmedForce(resultant.force(), resultant.arm());
  }

  private Peak peak(PressurePeak peak) {
    return new Peak(
        peak.pressure(),
        peak.by().name().toLowerCase(Locale.ROOT).replace('_', '-'),
        nearest(held.worn().made().order().measurements(), peak.station()).key(),
        peak.side().name().toLowerCase(Locale.ROOT),
        peak.station());
  }

  private static Level nearest(Measurements measured, double station) {
    return Arrays.stream(Level.values())
        .min(Comparator.comparingDouble(l -> Math.abs(measured.stationOf(l) - station)))
        .orElseThrow();
  }
}
