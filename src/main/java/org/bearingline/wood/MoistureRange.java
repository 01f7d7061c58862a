package org.bearingline.wood;

/**
 * The least and the most moisture that the wood of a piece will hold.
 *
 * @param driest percent, 0 to 30
 * @param dampest percent, driest to 30
 */
public record MoistureRange(double driest, double dampest) {

  public MoistureRange {
    Moisture.check("driest moisture", driest);
    Moisture.check("dampest moisture", dampest);
    Moisture.checkOrder(driest, dampest);
  }

  /** Of a year whose driest and dampest air are known. */
  public static MoistureRange between(Air driest, Air dampest) {
    return new MoistureRange(driest.moisture(), dampest.moisture());
  }

  /** Of a room at one temperature whose relative humidity runs from one figure to another. */
  public static MoistureRange indoors(Temperature temperature, double lowest, double highest) {
    return between(new Air(temperature, lowest), new Air(temperature, highest));
  }

  public boolean contains(double moisture) {
    return moisture >= driest && moisture <= dampest;
  }
}
