package org.bearingline.outside.clean;

import java.util.List;
import org.bearingline.outside.StrokePiece;

/**
 * Strokes of one figure joined end to end.
 *
 * @param pieces in the order of travel; small gaps between them are left
 * @param closed whether the last joins the first
 * @param source what the figure is called
 * @param figure number of the figure its first stroke belongs to
 */
record Chain(List<StrokePiece> pieces, boolean closed, String source, int figure) {}
