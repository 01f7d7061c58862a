/** Paper for the shop as PDF: full-size sheets and the card for the wall. */
package org.bearingline.export.pdf;
