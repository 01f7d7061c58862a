/** Preview pictures: the SVG document painted by Batik. */
package org.bearingline.export.png;
