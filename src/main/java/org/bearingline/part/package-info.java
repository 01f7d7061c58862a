/**
 * The finished piece as every room above sees it: contours with edge kinds, cavities, marks. Made
 * by {@code shape} from a shape file or by {@code outside} from a drawing, read by {@code routing}
 * and {@code job}.
 */
package org.bearingline.part;
