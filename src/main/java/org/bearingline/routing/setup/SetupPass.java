package org.bearingline.routing.setup;

import java.util.Objects;

/**
 * One pass.
 *
 * @param number from 1
 * @param depth mm below the face that the cutter's lower end reaches
 * @param taken mm deeper than the pass before
 * @param spacer mm of spacer on the turret stop, or between fence and stop: the height of this
 *     pass's setting above the final one of its stage; 0 for the last
 * @param rides what the follower rides
 * @param held whether the bearing has its contact; always true on a collar
 */
public record SetupPass(
    int number, double depth, double taken, double spacer, Riding rides, boolean held) {

  public SetupPass {
    Objects.requireNonNull(rides);
  }
}
