package org.bearingline.wood;

/**
 * The air that wood stands in.
 *
 * @param temperature of the air
 * @param humidity relative, percent
 */
public record Air(Temperature temperature, double humidity) {

  /**
   * Moisture content in percent that wood settles to in this air, by {@link EquilibriumMoisture}.
   *
   * @throws org.bearingline.problem.Problem outside the range of the handbook's table
   */
  public double moisture() {
    return EquilibriumMoisture.percent(temperature, humidity);
  }
}
