/**
 * Openings, recesses and ledges: the closed figures they are drawn from, and the checks that a part
 * is one piece of wood with its cavities inside it.
 */
package org.bearingline.shape.figure;
