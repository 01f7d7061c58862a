/**
 * What to saw out of which board: blanks of parts and templates, what they come to, and how they
 * lie on the boards a maker has. Read {@link org.bearingline.cutlist.CutList} first, then {@link
 * org.bearingline.cutlist.Packing}. Millimetres; the length of a board runs along its fibres.
 */
package org.bearingline.cutlist;
