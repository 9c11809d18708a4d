package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.List;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.measurement.Design.ProcessDesign;
import org.midlateral.measurement.Order;

/** The steps from the printer to the finger. Common practice, no source, where no figure stands. */
final class PrintSteps {
  private final Order order;
  private final boolean shell;
  private final Lengths lengths;

  /**
   * The steps of an order.
   *
   * @param shell whether a dorsal shell is made
   */
  PrintSteps(Order order, boolean shell, Lengths lengths) {
    this.order = order;
    this.shell = shell;
    this.lengths = lengths;
  }

  /**
   * All of them, in the order of the hands.
   *
   * @param closing what closes it, in a word or two
   */
  List<String> steps(String closing) {
    List<String> steps = new ArrayList<>();
    steps.add(
        "Measure the finger again at the levels overleaf. More than "
            + lengths.with(2)
            + " off at any level: have it made again.");
    steps.add(cleaned());
    steps.add("Lay each piece on its view overleaf, where that is 1:1, and compare its ends.");
    steps.add(
        "Feel every edge and the whole inside with your own fingertip. Smooth what is rough with"
            + " fine abrasive paper, wet; do not round the rims away.");
    steps.add("Wash it with soap, rinse it, dry it well.");
    steps.add(liner(order.design().trough().liner()));
    steps.add(
        "Mark the skin with a pen as page 1 says, on both sides, at every level, from the volar"
            + " midline.");
    steps.add(
        "Lay the finger in, the palmar side of the PIP joint on the bottom of the trough; no force.");
    steps.add("Look along both sides: the rims lie at the marks, or evenly beside them.");
    if (shell) {
      steps.add(
          "The dorsal shell's raised hook lies proximal, toward the hand. Push the shell on over both"
              + " rims at once, from the dorsum. It must go on without pain and sit by itself.");
    }
    steps.add("Fit the closure: " + closing + ". Then the checks beside.");
    steps.add("Let it be worn for 30 minutes before it is taken home, and look at the skin.");
    return steps;
  }

  private String cleaned() {
    ProcessDesign process = order.design().print().process();
    return switch (process) {
      case FILAMENT ->
          "Take all supports off, from the inside first, and cut strings away; look for layers"
              + " that come apart.";
      case POWDER -> "Brush and blow all loose powder off, out of vents and letters too.";
      case RESIN ->
          "With gloves: wash it and cure it all through as the resin's maker says, then take the"
              + " supports off.";
    };
  }

  private String liner(double liner) {
    return liner > 0
        ? "Stick a liner of "
            + lengths.thin(liner)
            + " into the trough, up to its rims: the piece has room for it."
        : "No liner: the piece has no room for one, and would be tight all round by its thickness.";
  }
}
