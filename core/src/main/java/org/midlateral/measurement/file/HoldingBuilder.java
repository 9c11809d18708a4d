package org.midlateral.measurement.file;

import java.util.OptionalDouble;
import org.midlateral.measurement.HoldingDesign;
import org.midlateral.measurement.HoldingDesign.BandDesign;
import org.midlateral.measurement.HoldingDesign.GaugeReading;
import org.midlateral.measurement.HoldingDesign.JointDesign;
import org.midlateral.measurement.HoldingDesign.LinerDesign;
import org.midlateral.measurement.HoldingDesign.SkinDesign;
import org.midlateral.measurement.HoldingDesign.TissueDesign;

/** Makes the records of joint, skin and bands from checked settings. */
final class HoldingBuilder {
  private final Settings settings;

  HoldingBuilder(Settings settings) {
    this.settings = settings;
  }

  HoldingDesign holding() {
    return new HoldingDesign(
        joint(),
        new SkinDesign(
            tissue("volar"),
            tissue("pulp"),
            tissue("side"),
            tissue("dorsum"),
            number("skin.over-joint"),
            number("skin.friction")),
        new LinerDesign(number("liner.modulus"), number("liner.stiffening")),
        new BandDesign(settings.number("closure.stiffness"), number("closure.tape-tension")),
        number("material.across-layers"),
        settings.number("material.creep"));
  }

  private JointDesign joint() {
    return new JointDesign(
        settings.number("joint.moment"),
        settings.number("joint.slope"),
        new GaugeReading(
            settings.number("joint.gauge.force"),
            settings.number("joint.gauge.distance"),
            angle("joint.gauge.angle")),
        Math.toRadians(number("joint.within")));
  }

  private TissueDesign tissue(String region) {
    String section = "skin." + region;
    return new TissueDesign(
        number(section + ".modulus"),
        number(section + ".stiffening"),
        number(section + ".thickness"));
  }

  private OptionalDouble angle(String path) {
    OptionalDouble degrees = settings.number(path);
    return degrees.isPresent()
        ? OptionalDouble.of(Math.toRadians(degrees.getAsDouble()))
        : OptionalDouble.empty();
  }

  private double number(String path) {
    return settings.number(path).orElseThrow();
  }
}
