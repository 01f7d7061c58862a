package org.bearingline.shape.figure;

import java.util.Optional;
import org.bearingline.part.Cavity;
import org.bearingline.problem.Place;
import org.bearingline.shape.formula.Formula;

/**
 * A cavity that can be drawn once the measures are known.
 *
 * @param figure its edge; empty for a ledge that follows another cavity
 * @param around the cavity that a ledge follows
 * @param width how far a ledge reaches beyond the cavity it follows
 * @param depth empty for a through opening
 */
record CavityPlan(
    String name,
    Cavity.Kind kind,
    Optional<Figure> figure,
    Optional<String> around,
    Optional<Formula> width,
    Optional<Formula> depth,
    Place place) {}
