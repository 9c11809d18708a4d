package org.midlateral.mechanics.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.midlateral.mechanics.joint.SpringLaw.SpringAnswer;

/** Force is the slope of the energy and stiffness that of the force, for every spring. */
class SpringLawTest {
  private static final SoftLayer SKIN = new SoftLayer(0.025, 6, 4.5);
  private static final SoftLayer LINER = new SoftLayer(0.15, 3, 1.5);
  private static final double STEP = 1e-5;

  private static void assertSlopes(SpringLaw law, double... closings) {
    for (double x : closings) {
      SpringAnswer before = law.at(x - STEP);
      SpringAnswer here = law.at(x);
      SpringAnswer after = law.at(x + STEP);
      double force = (after.energy() - before.energy()) / (2 * STEP);
      double stiffness = (after.force() - before.force()) / (2 * STEP);
      assertThat(here.force()).as("at %s", x).isCloseTo(force, within(1e-6 * (1e-3 + force)));
      assertThat(here.stiffness())
          .as("at %s", x)
          .isCloseTo(stiffness, within(1e-6 * (1e-3 + stiffness)));
    }
  }

  @Test
  void softContacts() {
    assertSlopes(new SoftContact(List.of(SKIN), 9), -1, 0.01, 0.3, 1, 2.5, 3.5);
    assertSlopes(new SoftContact(List.of(SKIN, LINER), 9), -1, 0.01, 0.3, 1, 3, 4.5);
    assertSlopes(new SoftContact(List.of(new SoftLayer(0.05, 0, 3)), 4), -1, 0.01, 1, 2.5);
  }

  @Test
  void hoops() {
    Hoop onSkin = new Hoop(0.2, 0.5, 0.04, 0.3, 0.05, List.of(SKIN), 2.2, 40);
    Hoop onPlastic = new Hoop(0.2, 0.5, 4, 0.3, 0, List.of(), 0, 0);
    assertSlopes(onSkin, -20, -2, 0.01, 1, 6);
    assertSlopes(onPlastic, -20, 0.1, 0.5, 2);
    assertSlopes(onSkin.with(0.5, 0, 0.3), -2, 0.01, 1, 6);
  }

  /** p = (E/b) (exp(b d/h) - 1), over an area; nothing where it does not touch. */
  @Test
  void skinFollowsItsLaw() {
    SoftContact contact = new SoftContact(List.of(SKIN), 9);
    double pressure = 0.025 / 6 * (Math.exp(6 * 1.2 / 4.5) - 1);
    assertThat(contact.at(1.2).force()).isCloseTo(9 * pressure, within(1e-12));
    assertThat(contact.at(0)).isEqualTo(SpringAnswer.NONE);
    assertThat(contact.at(-0.5)).isEqualTo(SpringAnswer.NONE);
  }

  /** Under one pressure the two layers' own squeezes add up. */
  @Test
  void aLinerIsASpringInSeries() {
    SoftContact both = new SoftContact(List.of(SKIN, LINER), 7);
    double p = both.at(1.1).force() / 7;
    assertThat(SKIN.squeeze(p) + LINER.squeeze(p)).isCloseTo(1.1, within(1e-12));
    assertThat(SKIN.pressure(SKIN.squeeze(p))).isCloseTo(p, within(1e-14));
  }

  /** Laplace: p = n T / (w r), the strip being bands n/w ds of a band turning by an arc on skin. */
  @Test
  void aBandPressesByLaplace() {
    double radius = 9;
    double arc = 2.1;
    double strip = 2.5;
    double layers = 2;
    double width = 25;
    Hoop hoop =
        new Hoop(layers * strip / width, 0.5, 0, 0, 0, List.of(SKIN), arc, arc * radius * strip);
    assertThat(hoop.pressure(0)).isCloseTo(layers * 0.5 / (width * radius), within(1e-15));
    assertThat(hoop.squeezed(0)).isCloseTo(SKIN.squeeze(hoop.pressure(0)), within(1e-15));
  }

  @Test
  void aBandPullsAsItWasLaidWhereItWasLaid() {
    Hoop laying = new Hoop(0.2, 0.7, 0, 0, 0.05, List.of(SKIN), 2.2, 40);
    double x = -0.8;
    Hoop held = laying.with(0.7, 0.5, laying.laid(x));
    assertThat(held.tension(x)).isCloseTo(0.7, within(1e-12));
    assertThat(held.tension(x + 1)).isBetween(0.7, 1.2);
    assertThat(held.tension(x - 5)).isZero();
  }
}
