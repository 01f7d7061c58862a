/**
 * A request worked out: read the source, measure the shape, route it, draw it, write it. The front
 * doors build a request ({@link org.bearingline.job.Wishes}) and show the answer.
 */
package org.bearingline.job;
