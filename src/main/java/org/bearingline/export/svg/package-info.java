/** Full-size SVG, built as a document tree with Batik. */
package org.bearingline.export.svg;
