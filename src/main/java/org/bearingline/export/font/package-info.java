/** The font that is shipped with the program: widths of words and outlines of letters. */
package org.bearingline.export.font;
