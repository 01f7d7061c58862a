package org.bearingline.routing;

import java.util.List;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.part.Part;

/**
 * A = (T ⊕ D(R)) ⊖ D(r), worked forward from the finished template and compared with P. It knows
 * nothing of how the template was made.
 *
 * @param maxDeviation largest distance in mm between the cut edge and the routed edge, either way,
 *     outside the named leftovers and overcuts
 * @param at where it is
 * @param samples how many places were compared
 */
public record Proof(double maxDeviation, Point at, int samples) {

  /**
   * Taken off both radii, in mm, so that a bit exactly as wide as a slot enters it. The offset
   * between template and cut edge, R − r, stays the same to the last digit.
   */
  private static final double JUST_FITS = 1e-5;

  /**
   * Plays all templates of a part forward.
   *
   * @param named pieces left out of the comparison, because they are told elsewhere
   */
  static Proof of(
      Part part, List<Template> templates, Cutter cutter, Follower follower, List<Outline> named) {
    ProofSamples samples = new ProofSamples(part, named);
    for (Template template : templates) {
      Region plate = Region.of(template.plate());
      Region free = Morphology.dilate(plate, follower.radius() - JUST_FITS).region();
      Region made = Morphology.erode(free, cutter.radius() - JUST_FITS).region();
      samples.compare(made, template.serves());
    }
    return new Proof(samples.most(), samples.at(), samples.count());
  }
}
