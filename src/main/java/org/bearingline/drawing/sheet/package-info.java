/**
 * Full-size pages of a drawing: which paper, how many pages, what each shows and how they join.
 * Pure arithmetic over boxes, without any file format, so that the pages, the page map and a screen
 * agree. Begin with {@link org.bearingline.drawing.sheet.PaperChoice}, then {@link
 * org.bearingline.drawing.sheet.SheetPlan}.
 */
package org.bearingline.drawing.sheet;
