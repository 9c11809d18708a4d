package org.midlateral.json;

/** A record that reports hold: of its components, those that are null are left out of the JSON. */
public interface ReportPart {

  /**
   * The name in JSON of a component; its own where that serves.
   *
   * @param component its name in the record
   */
  default String jsonName(String component) {
    return component;
  }
}
