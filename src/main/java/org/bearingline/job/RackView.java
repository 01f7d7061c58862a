package org.bearingline.job;

import java.util.List;

/**
 * The tools of a kit beside one part.
 *
 * @param kit its name
 * @param largest a sentence on the largest bit that leaves nothing
 * @param bits by growing diameter
 * @param followers bearings, then collars
 * @param blades by growing width
 */
public record RackView(
    String kit,
    String largest,
    List<BitView> bits,
    List<FollowerView> followers,
    List<BladeView> blades) {

  /**
   * One bit.
   *
   * @param write how it is written in a job file
   * @param words its diameter in the job's units
   * @param diameter mm
   * @param cuttingLength in words; "?" where not known
   * @param shank likewise
   * @param bearing where its bearing sits
   * @param speed its ceiling in words
   * @param verdict clean, nearly, leaves or refused
   * @param word the same for a person
   * @param leftovers how many places it leaves
   * @param depthMm of the deepest of them
   * @param details what {@code reach} says
   * @param chosen whether it works the part
   */
  public record BitView(
      String write,
      String words,
      double diameter,
      String cuttingLength,
      String shank,
      String bearing,
      String speed,
      String verdict,
      String word,
      int leftovers,
      double depthMm,
      List<String> details,
      boolean chosen) {}

  /** A bearing or collar. */
  public record FollowerView(
      String kind, String write, String words, String inside, boolean chosen) {}

  /** A saw blade. */
  public record BladeView(String write, String words, String radius, boolean chosen) {}
}
