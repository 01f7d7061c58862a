/**
 * What lies where: pieces in flat arrays, their index, their crossings, the nesting of loops and
 * the check of drawn outlines. The only room that imports JTS; none of its types leaves.
 */
package org.bearingline.outline.topology;
