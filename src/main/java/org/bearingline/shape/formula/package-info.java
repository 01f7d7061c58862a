/**
 * Plain arithmetic with lengths, angles and numbers. A formula is parsed once, every operation's
 * dimension is checked, and what remains is evaluated in double. Formulas see names and numbers,
 * never files or classes. Read {@link org.bearingline.shape.formula.Formula} first.
 */
package org.bearingline.shape.formula;
