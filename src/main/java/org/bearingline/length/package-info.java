/** Lengths as makers write and read them, for the edges of the program. */
package org.bearingline.length;
