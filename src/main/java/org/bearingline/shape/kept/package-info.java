/**
 * Writes shape files: a part drawn or found by hand is kept as one, to be laid out again and made
 * longer where it is straight. Read {@link org.bearingline.shape.kept.KeptShape} first.
 */
package org.bearingline.shape.kept;
