package org.bearingline.cutlist;

/**
 * One single board, trimmed.
 *
 * @param board its kind
 * @param number which of its quantity, from 1
 * @param length mm that can be used
 * @param width mm that can be used
 */
record StockBoard(Board board, int number, double length, double width) {}
