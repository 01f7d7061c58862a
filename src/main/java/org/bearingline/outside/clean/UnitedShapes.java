package org.bearingline.outside.clean;

/**
 * Filled shapes that lie over or against each other and became one; areas in mm².
 *
 * @param shapes how many were united; 0 where none lie over each other
 * @param outlines how many came of them
 * @param openings how many of the openings in them were united
 * @param openingsLeft how many openings came of these
 * @param drawnArea of the united shapes, each by itself, together
 * @param area of what came of them, before openings drawn apart are taken out
 */
public record UnitedShapes(
    int shapes, int outlines, int openings, int openingsLeft, double drawnArea, double area) {

  /** Whether anything was united. */
  public boolean isAny() {
    return shapes + openings > 0;
  }
}
