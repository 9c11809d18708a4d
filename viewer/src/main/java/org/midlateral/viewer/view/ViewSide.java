package org.midlateral.viewer.view;

import org.midlateral.measurement.Hand;

/** The six sides a finger is looked at from. */
public enum ViewSide {
  DORSAL("Dorsal", Math.PI, Math.PI / 2),
  VOLAR("Volar", 0, -Math.PI / 2),
  RADIAL("Radial", Math.PI / 2, 0),
  ULNAR("Ulnar", -Math.PI / 2, 0),
  PROXIMAL("Proximal", Math.PI, 0),
  DISTAL("Distal", 0, 0);

  private final String title;
  private final double yaw;
  private final double pitch;

  ViewSide(String title, double yaw, double pitch) {
    this.title = title;
    this.yaw = yaw;
    this.pitch = pitch;
  }

  /** Direction of the eye about z (rad): y points to the radial side of a right hand only. */
  double yaw(Hand hand) {
    boolean turned = hand == Hand.LEFT && (this == RADIAL || this == ULNAR);
    return turned ? -yaw : yaw;
  }

  double pitch() {
    return pitch;
  }

  @Override
  public String toString() {
    return title;
  }
}
